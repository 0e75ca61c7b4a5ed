import type { BrowserContext, BrowserContextOptions, Page } from "playwright-core";
import { afterEach, expect, test } from "vitest";
import { phone, wide } from "./chromium.ts";
import { storyServer } from "./story-server.ts";
import { atHalls, expectSound, hallsOnServer, loseSignal, ownErrors } from "./measuring-story.ts";

const story = storyServer();
let context: BrowserContext;
let page: Page;
let errors: string[] = [];

afterEach(async () => {
  expect(ownErrors(errors)).toEqual([]);
  await context.close();
});

async function begin(options: BrowserContextOptions, demo?: string): Promise<void> {
  ({ context, page, errors } = await atHalls(story.browser, story.server, options, demo));
}

const button = (name: string | RegExp) => page.getByRole("button", { name, exact: true });
const box = (name: string) => page.getByRole("textbox", { name, exact: true });

async function walls(...lengths: readonly (readonly [name: string, length: string])[]): Promise<void> {
  for (const [index, [name, length]] of lengths.entries()) {
    await box(`Wall ${name}`).fill(length);
    if (index < lengths.length - 1) await button("Next wall").click();
  }
}

async function widthOnServer(): Promise<number> {
  const [hall] = await halls();
  return Math.max(...(hall?.document.outline ?? []).map(([x]) => x));
}

const halls = () => hallsOnServer(page, story.server);

test("on a phone without a signal a hall is walked round, the page is thrown away half way, and the hall arrives", async () => {
  await begin(phone);
  await loseSignal(context, page);
  await page.getByRole("link", { name: "Measure a hall" }).click();
  await expectSound(page);
  await button("Wall by wall with a tape").click();
  await walls(["A–B", "8"], ["B–C", "12"], ["C–D", "8.0"]);
  await page.getByText("3 walls so far. From D back to A it is 12.00 m.").waitFor();
  await expectSound(page);

  // thrown away in the middle of a wall, and begun again without a signal
  await page.reload();
  expect(await box("Wall C–D").inputValue()).toBe("8.0");
  await button("Next wall").click();
  await box("Wall D–E").fill("11.98");
  await page.getByText("This wall ends 0.02 m from A").waitFor();
  await button("That was the last wall").click();

  await page.getByText("Measure the diagonal A–C next").waitFor();
  // √(8² + 12²) = 14.42 m
  await box("Diagonal A–C").fill("14.42");
  await page.getByText("That is as near as a tape comes: nothing is likely wrong.").waitFor();
  await page.getByRole("row", { name: "wall D–A 11.98 m 11.99 m +0.01 m" }).waitFor();
  await expectSound(page);
  await box("Name of the hall").fill("Tithe Loft");
  await button("Make it a new hall").click();
  await page.getByText("Not saved: the server does not answer. Kept on this device.").waitFor();
  expect(await halls()).toEqual([]);

  await context.setOffline(false);
  await expect.poll(halls).toHaveLength(1);
  const [hall] = await halls();
  expect(hall?.document.name).toBe("Tithe Loft");
  const [, b = [0, 0], c = [0, 0]] = hall?.document.outline ?? [];
  expect([Math.abs(b[0] - 8), Math.abs(c[1] - 12)].every((it) => it < 0.02)).toBe(true);
  await page.getByRole("link", { name: "Tithe Loft" }).click();
  await page
    .getByText(/^\d+ mats fit/)
    .first()
    .waitFor();
});

test("a hall that was made without a signal arrives on whatever page is opened once the signal is back", async () => {
  await begin(phone);
  await loseSignal(context, page);
  await page.getByRole("link", { name: "Measure a hall" }).click();
  await button("Wall by wall with a tape").click();
  await walls(["A–B", "6"], ["B–C", "9"], ["C–D", "6"], ["D–E", "9"]);
  await button("That was the last wall").click();
  await box("Name of the hall").fill("Mission Loft");
  await button("Make it a new hall").click();
  await page.getByText("Not saved: the server does not answer. Kept on this device.").waitFor();
  const practice = page.url().replace(/measure.*$/, "classes");
  // closed while there is no signal: nothing of that page is left to deliver it
  await page.close();
  await context.setOffline(false);
  page = await context.newPage();
  await page.goto(practice);
  await page.getByRole("heading", { name: "Classes", level: 1 }).waitFor();
  await expect.poll(halls).toHaveLength(1);
});

test("a wall that is wrong is named and measured again; bad figures are said in words and lose nothing", async () => {
  await begin(phone);
  await page.getByRole("link", { name: "Measure a hall" }).click();
  await button("Wall by wall with a tape").click();
  await box("Wall A–B").fill("-8");
  await page.getByText("“-8” is less than nothing.").waitFor();
  await box("Wall A–B").fill("0");
  await page.getByText("That is less than a centimetre.").waitFor();
  await walls(["A–B", "8"], ["B–C", "12.3"], ["C–D", "8"], ["D–E", "12"]);
  await button("That was the last wall").click();
  await box("Diagonal A–C").fill("14.42");
  await page.getByText(/Measure the diagonal B–D next/).waitFor();
  await box("Diagonal B–D").fill("14.42");
  await page
    .getByText(
      "Likely wrong is the wall B–C: 12.30 m was measured, the others say about 12.00 m, 0.30 m less.",
    )
    .waitFor();
  await page.getByRole("row", { name: /wall B–C likely wrong 12\.30 m/ }).waitFor();
  await button("Measure the wall B–C again").click();
  await box("Wall B–C").fill("12");
  await button("Back to the outline").click();
  await page.getByText("nothing is likely wrong").waitFor();

  // a diagonal longer than the hall contradicts everything, and is the one that is named
  await box("Diagonal B–D").fill("44.2");
  await page.getByText(/Likely wrong is the diagonal B–D|more than one is wrong/).waitFor();
  await button("Take away the diagonal B–D").click();
  await page.getByText("nothing is likely wrong").waitFor();

  // walls that cross: a turn the other way
  await button("Change wall B–C").click();
  await page.getByRole("radio", { name: "right, square" }).check();
  await button("Back to the outline").click();
  await page.getByText(/The turns add up to 180°, and once round is 360°\./).waitFor();
  expect(await page.getByRole("row").count()).toBe(0);
  await page.getByText("There is no outline yet.").waitFor();
});

test("an outline takes the place of a hall’s floor after it said what becomes of the door, and is put back", async () => {
  await begin({ ...wide, colorScheme: "dark" });
  await button("Draw a hall").click();
  await page.getByRole("textbox", { name: "Width left to right on the drawing" }).fill("8");
  await page.getByRole("textbox", { name: "Length bottom to top on the drawing" }).fill("12");
  await button("Draw this floor").click();
  await button("Door").click();
  await page
    .getByText(/^Saved \d/)
    .first()
    .waitFor();
  await page.getByRole("link", { name: "Measure this hall" }).click();
  await page.getByRole("heading", { name: "Measure New hall again" }).waitFor();
  await button("Wall by wall with a tape").click();
  await walls(["A–B", "8.1"], ["B–C", "12.05"], ["C–D", "8.1"], ["D–E", "12.05"]);
  await button("That was the last wall").click();
  await page.getByText("Door: hung in the new wall, as far from its corner as before.").waitFor();
  await expectSound(page);
  await button("Use it for New hall").click();
  await expect.poll(widthOnServer).toBe(8.1);
  await page.reload();
  await button("Put back the floor that was there").click();
  await expect.poll(widthOnServer).toBe(8);
});

async function feet(name: string, length: string, inches: string): Promise<void> {
  await box(`Wall ${name}, feet`).fill(length);
  await box(`Wall ${name}, inches`).fill(inches);
}

test("walls in feet and inches, one angle that is not known, and a walk that is gone on with another day", async () => {
  await begin({ ...phone, colorScheme: "dark" }, "Open Cedar Fork, in dollars");
  await page.getByRole("link", { name: "Measure a hall" }).click();
  await button("Wall by wall with a tape").click();
  // 30 by 20 ft with the corner from (30, 14) to (24, 20) cut off: the slant is √72 ft = 8 ft 5.8 in
  await feet("A–B", "30", "0");
  await button("Next wall").click();
  await feet("B–C", "14", "");
  await page.getByRole("radio", { name: "left, not square" }).check();
  await page.getByRole("link", { name: "All that is measured on this device" }).click();
  await page.getByText("2 walls with a tape, begun").waitFor();
  await expectSound(page);
  await page.getByRole("link", { name: "A new hall" }).click();
  await button("Next wall").click();
  await feet("C–D", "8", "5.8");
  await page.getByRole("radio", { name: "left, not square" }).check();
  await button("Next wall").click();
  await page.getByText("An angle is not known").waitFor();
  await expectSound(page);
  await feet("D–E", "24", "0");
  await button("Next wall").click();
  await feet("E–F", "20", "0");
  await button("That was the last wall").click();
  await page.getByRole("row", { name: /^corner C not known 4[45]\.\d°/ }).waitFor();
  await page.getByRole("row", { name: /^wall C–D 8 ft 5 3\/4 in/ }).waitFor();
  await expectSound(page);
  await page.getByRole("link", { name: "All that is measured on this device" }).click();
  await page.getByRole("button", { name: /^Let go/ }).click();
  await button("Let go of the figures of A new hall").click();
  await expect.poll(() => page.getByRole("link", { name: "A new hall" }).count()).toBe(0);
});

test("a device that keeps nothing says so, and the figures are there for as long as the page is", async () => {
  await begin(phone);
  await page.evaluate(() => {
    Storage.prototype.setItem = () => {
      throw new Error("no room");
    };
  });
  await page.getByRole("link", { name: "Measure a hall" }).click();
  await button("Wall by wall with a tape").click();
  await walls(["A–B", "8"], ["B–C", "12"]);
  await page.getByText("This device keeps nothing: do not close the page.").first().waitFor();
  await page.getByText("2 walls so far. From C back to A it is 14.42 m.").waitFor();
  await page.getByRole("link", { name: "All that is measured on this device" }).click();
});
