import { AxeBuilder } from "@axe-core/playwright";
import type { BrowserContextOptions, Page } from "playwright-core";
import { afterEach, expect, test } from "vitest";
import { freshPage, phone, wide } from "./chromium.ts";
import { storyServer } from "./story-server.ts";

const story = storyServer();
let page: Page;
let errors: string[] = [];

afterEach(async () => {
  expect(errors).toEqual([]);
  await page.context().close();
});

/** A new hall at the question of its shape. */
async function atTheShape(options: BrowserContextOptions): Promise<void> {
  ({ page, errors } = await freshPage(story.browser, options));
  await page.goto(story.server.address);
  await page.getByRole("textbox", { name: "Name of the practice" }).fill("Wren Ashdown");
  await page.getByRole("button", { name: "Begin", exact: true }).click();
  await page.getByRole("link", { name: "Halls" }).click();
  await page.getByRole("button", { name: "Draw a hall" }).click();
}

async function drawRectangle(width: string, length: string): Promise<void> {
  await page.getByRole("textbox", { name: "Width left to right on the drawing" }).fill(width);
  await page.getByRole("textbox", { name: "Length bottom to top on the drawing" }).fill(length);
  await page.getByRole("button", { name: "Draw this floor" }).click();
  await matsSaid().waitFor();
}

const matsSaid = () =>
  page.getByRole("region", { name: "The floor", exact: true }).getByText(/^\d+ mats fit/);
const corner = (name: string) => page.getByRole("button", { name: new RegExp(`^Corner ${name},`) });

async function markOf(name: string): Promise<{ x: number; y: number }> {
  const box = await corner(name).locator(".floor-mark").boundingBox();
  if (box === null) throw new Error(`corner ${name} is not drawn`);
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

test("an L is drawn from its sides, and a missing corner that is too long is said at its field", async () => {
  await atTheShape(wide);
  await page.getByRole("radio", { name: "an L" }).check();
  await page.getByRole("textbox", { name: /^Whole width/ }).fill("10");
  await page.getByRole("textbox", { name: /^Whole length/ }).fill("8");
  await page.getByRole("textbox", { name: "Missing corner, width" }).fill("12");
  await page.getByRole("textbox", { name: "Missing corner, length" }).fill("3");
  await page.getByRole("button", { name: "Draw this floor" }).click();
  await page.getByText("as long as the whole width or longer").waitFor();
  await page.getByRole("textbox", { name: "Missing corner, width" }).fill("4");
  await page.getByRole("button", { name: "Draw this floor" }).click();
  await matsSaid().waitFor();
  // 10 − 4 = 6 across and 8 − 3 = 5 up
  await page.getByRole("button", { name: "Corner D, 6.00 m, 5.00 m" }).waitFor();
});

test("a floor walked round wall by wall says how far it is from closing before it is drawn", async () => {
  await atTheShape(wide);
  await page.getByRole("radio", { name: "any other shape, wall by wall" }).check();
  for (const [wall, length] of [
    ["A–B", "6"],
    ["B–C", "9"],
    ["C–D", "5.7"],
    ["D–A", "9"],
  ] as const) {
    await page.getByRole("textbox", { name: `Wall ${wall}` }).fill(length);
  }
  await page.getByText("0.30 m from where the first began: a wall is missing or measured wrong").waitFor();
  await page.getByRole("textbox", { name: "Wall C–D" }).fill("6");
  await page.getByText("The last wall ends where the first began.").waitFor();
  await page.getByRole("button", { name: "Draw this floor" }).click();
  await page.getByRole("button", { name: "Wall D–A, 9.00 m" }).waitFor();
});

test("on a phone a finger beside the corner drags it, and the page stays where it is", async () => {
  await atTheShape(phone);
  await drawRectangle("8", "9");
  await corner("C").scrollIntoViewIfNeeded();
  const { x, y } = await markOf("C");
  const before = await page.evaluate<number>("scrollY");
  const touch = await page.context().newCDPSession(page);
  const send = (type: "touchStart" | "touchMove" | "touchEnd", at: readonly [number, number] | null) =>
    touch.send("Input.dispatchTouchEvent", {
      type,
      touchPoints: at === null ? [] : [{ x: at[0], y: at[1] }],
    });
  // the finger lands 12 px beside the mark and goes 40 px to the left and 40 px down
  await send("touchStart", [x - 8, y + 9]);
  for (let step = 1; step <= 20; step++) await send("touchMove", [x - 8 - 2 * step, y + 9 + 2 * step]);
  await send("touchEnd", null);
  await page.getByRole("button", { name: /^Corner C, [67]\.\d\d m, [78]\.\d\d m$/ }).waitFor();
  expect(await page.evaluate<number>("scrollY")).toBe(before);
});

test("a door hangs where its hinge is typed, goes out with its wall, and comes back with undo", async () => {
  await atTheShape(wide);
  await drawRectangle("7.5", "11");
  await page.getByRole("button", { name: "Door", exact: true }).click();
  const hinge = page.getByRole("textbox", { name: "Hinge from A" });
  await hinge.fill("1 m");
  await hinge.press("Enter");
  await page.getByRole("button", { name: /^Door, 0\.9\d m by 0\.9\d m, at 1\.00 m, 0\.00 m$/ }).waitFor();
  await page.getByRole("button", { name: /^Wall A–B/ }).focus();
  // down the sheet is out of the hall for the wall at the bottom
  await page.keyboard.press("Alt+ArrowDown");
  await page.getByRole("button", { name: /^Door, .*, at 1\.00 m, -1\.00 m$/ }).waitFor();
  await page.keyboard.press("Control+z");
  await page.getByRole("button", { name: /^Door, .*, at 1\.00 m, 0\.00 m$/ }).waitFor();
});

test("the lists alone, without the drawing, put a stage on the floor and take a corner away", async () => {
  await atTheShape(phone);
  await drawRectangle("8", "12");
  const mats = await matsSaid().innerText();
  await page.getByRole("button", { name: "Fixture", exact: true }).click();
  const stage = page.getByRole("group", { name: "Fixture" });
  for (const [field, length] of [
    ["Width", "8"],
    ["Depth", "2.5"],
    ["Across", "0"],
    ["Up", "9.5"],
  ] as const) {
    await stage.getByRole("textbox", { name: field }).fill(length);
    await stage.getByRole("textbox", { name: field }).press("Enter");
  }
  await stage.getByRole("combobox", { name: "Name" }).fill("Stage");
  await page.getByRole("button", { name: "Stage, 8.00 m by 2.50 m, at 0.00 m, 9.50 m" }).waitFor();
  await expect.poll(() => matsSaid().innerText()).not.toBe(mats);
  await page.getByText(/^Walls and corners/).click();
  await page.getByRole("button", { name: "New corner in wall A–B" }).click();
  await page.getByRole("button", { name: "Corner B, 4.00 m, 0.00 m" }).waitFor();
  await page.getByRole("button", { name: "Remove corner B" }).click();
  await page.getByRole("button", { name: "Corner B, 8.00 m, 0.00 m" }).waitFor();
  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations.map((it) => it.id)).toEqual([]);
});
