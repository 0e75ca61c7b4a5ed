import type { Page } from "playwright-core";
import { beforeEach, afterEach, expect, test } from "vitest";
import { freshPage, wide } from "./chromium.ts";
import { storyServer } from "./story-server.ts";

const story = storyServer();
let page: Page;
let errors: string[];

// Each story starts from a hall of 7.50 m by 11.00 m, which takes 27 mats at the usual gaps.
beforeEach(async () => {
  ({ page, errors } = await freshPage(story.browser, wide));
  await page.goto(story.server.address);
  await page.getByRole("textbox", { name: "Name of the practice" }).fill("Wren Ashdown");
  await page.getByRole("button", { name: "Begin", exact: true }).click();
  await page.getByRole("link", { name: "Halls" }).click();
  await page.getByRole("button", { name: "Draw a hall" }).click();
  await page.getByRole("textbox", { name: "Width left to right on the drawing" }).fill("7.5");
  await page.getByRole("textbox", { name: "Length bottom to top on the drawing" }).fill("11");
  await page.getByRole("button", { name: "Draw this floor" }).click();
  await says("27 mats fit");
});

afterEach(async () => {
  expect(errors).toEqual([]);
  await page.context().close();
});

function says(words: string | RegExp): Promise<void> {
  return page.getByRole("region", { name: "The floor", exact: true }).getByText(words).first().waitFor();
}

const corner = (name: string) => page.getByRole("button", { name: new RegExp(`^Corner ${name},`) });
const wall = (name: string) => page.getByRole("button", { name: new RegExp(`^Wall ${name},`) });

test("a wall dragged with the mouse changes the mats, and undo brings them back", async () => {
  // a mouse reaches only what is on the screen
  await wall("B–C").scrollIntoViewIfNeeded();
  const box = await wall("B–C").boundingBox();
  if (box === null) throw new Error("the wall is not drawn");
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await page.mouse.down();
  await page.mouse.move(box.x + box.width / 2 - 60, box.y + box.height / 2, { steps: 8 });
  await page.mouse.up();
  await says(/^(1\d|2[0-4]) mats fit/);
  await page.getByRole("button", { name: "Undo" }).click();
  await says("27 mats fit");
  await page.getByRole("button", { name: "Redo" }).click();
  await says(/^(1\d|2[0-4]) mats fit/);
});

test("the keyboard alone moves a wall, types a length and takes it back", async () => {
  await wall("B–C").focus();
  // two steps of 1 m make 9.50 m: 4 mats turned in each of 9 lines
  await page.keyboard.press("Alt+ArrowRight");
  await page.keyboard.press("Alt+ArrowRight");
  await says("36 mats fit");
  // steps of one key on one wall are one change
  await page.keyboard.press("Control+z");
  await says("27 mats fit");
  await wall("A–B").focus();
  await page.keyboard.press("Enter");
  await page.keyboard.press("Control+a");
  await page.keyboard.type("9.5");
  await page.keyboard.press("Enter");
  await says("36 mats fit");
});

test("a length that cannot be read is said and kept, and the floor stays", async () => {
  await wall("A–B").focus();
  await page.keyboard.press("Enter");
  await page.keyboard.press("Control+a");
  await page.keyboard.type("seven and a bit");
  await page.keyboard.press("Enter");
  await page
    .getByText(/is not a length/)
    .first()
    .waitFor();
  await page.keyboard.press("Escape");
  await says("27 mats fit");
});

test("walls that cross are said in words, the last good plan stays and nothing is lost", async () => {
  const from = await corner("D").boundingBox();
  const to = await corner("C").boundingBox();
  if (from === null || to === null) throw new Error("the corners are not drawn");
  await page.mouse.move(from.x + from.width / 2, from.y + from.height / 2);
  await page.mouse.down();
  // past wall B–C and below C: wall D–A then cuts through B–C
  await page.mouse.move(to.x + 60, to.y + 80, { steps: 10 });
  await page.mouse.up();
  await says("The floor crosses itself");
  await page.getByRole("button", { name: "Undo" }).click();
  await says("27 mats fit");
});
