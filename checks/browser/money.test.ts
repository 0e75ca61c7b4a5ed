import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { freshPage, phone, wide, wordsOn } from "./chromium.ts";
import { faultsOf } from "./page-faults.ts";
import { fill, part } from "./page-parts.ts";
import { storyServer } from "./story-server.ts";

const story = storyServer();

async function openMoney(page: Page, demo = "Open Marlsford, in pounds"): Promise<void> {
  await page.goto(story.server.address);
  await page.getByRole("button", { name: demo }).click();
  await page.getByRole("heading", { name: "Classes", level: 1 }).waitFor();
  await page.getByRole("navigation", { name: "Places" }).getByRole("link", { name: "Money" }).click();
  await page.getByRole("heading", { name: "Money", level: 1 }).waitFor();
}

async function saved(page: Page): Promise<void> {
  await page
    .getByText(/^Saved/)
    .first()
    .waitFor();
}

const strange = /NaN|undefined|Infinity|null|\[object|\d{4}-\d{2}/;

test("the money of the demo is told, drawn and tabled: the bank, the tax pot with its January, and the path", async () => {
  const { context, page, errors } = await freshPage(story.browser, wide);
  await openMoney(page);
  const bank = part(page, "The bank, month by month");
  await bank.getByText(/^The bank is lowest on 7 September 2026 with £[\d.]+, and holds/).waitFor();
  expect(await bank.getByRole("img").count()).toBe(1);
  // eleven months and the heading
  expect(
    await bank
      .getByRole("table", { name: /^The bank by month/ })
      .getByRole("row")
      .count(),
  ).toBe(12);
  await bank.getByText("Show the working").click();
  await bank.getByRole("rowheader", { name: "in the bank on 1 September 2026" }).waitFor();

  const pot = part(page, "The tax pot");
  await pot.getByText(/^Put aside \d+ % of each receipt for the tax year from 6 April 2026/).waitFor();
  // last year's bill of 1,120.00 and half of it again
  await pot.getByText(/due together: £1,680\.00, half as much again as the bill/).waitFor();
  await pot.getByText("Where the rates come from").click();
  await pot
    .getByText(/An open tax model’s|An open tax model's/)
    .first()
    .waitFor();

  const path = part(page, "From studio work to your own classes");
  await path
    .getByText(
      /^From 1 March 2027 on the rest carries it without .*: at least 80 chances in a hundred of £1,700\.00 a month\.$/,
    )
    .waitFor();
  expect(await path.getByRole("img").count()).toBe(1);
  expect(await wordsOn(page)).not.toMatch(strange);
  expect(errors).toEqual([]);
  await context.close();
});

test("a change is answered and kept, and what cannot be meant is told in words", async () => {
  const { context, page, errors } = await freshPage(story.browser, wide);
  await openMoney(page);
  const bank = part(page, "The bank, month by month");
  await fill(page.getByRole("textbox", { name: "In the bank that morning" }), "-300");
  await bank.getByText(/^That is below nought/).waitFor();
  await fill(page.getByRole("textbox", { name: "What you need, before tax" }), "0");
  await page.getByText("What you need a month is not known yet").first().waitFor();
  await fill(page.getByRole("textbox", { name: "What you need, before tax" }), "9000");
  await part(page, "From studio work to your own classes")
    .getByText(/^Within these months nothing can go/)
    .waitFor();

  await page.getByRole("combobox", { name: "Where it is taxed" }).selectOption("Scotland");
  await part(page, "The tax pot")
    .getByText(/^Put aside/)
    .first()
    .waitFor();
  await page.getByText("Change the rates", { exact: true }).click();
  await page.getByRole("button", { name: "Change the rates of Scotland, 2026/27" }).click();
  await fill(page.getByRole("textbox", { name: "Band 1: rate" }), "101");
  await page.getByText("101 cannot be right here. Give a number from 0 to 100.").waitFor();
  // at 90 % the 3,137.00 of the starter band that the job leaves free bring 2,823.30: some 28 % of what is received
  await fill(page.getByRole("textbox", { name: "Band 1: rate" }), "90");
  await part(page, "The tax pot")
    .getByText(/^Put aside 2[5-9] % of each receipt/)
    .first()
    .waitFor();

  const before = page.getByRole("button", { name: /^Take over \d classes from the week$/ });
  await before.click();
  await page.getByText("Lunch at the mill: £70.00 a session").waitFor();
  await page.getByRole("combobox", { name: "Where it is taxed" }).selectOption("Leave tax out");
  await page.getByText("Tax is not in this.").waitFor();
  await saved(page);
  await page.reload();
  await page.getByText("Lunch at the mill: £70.00 a session").waitFor();
  await page.getByText("Tax is not in this.").waitFor();
  expect(await page.getByRole("textbox", { name: "In the bank that morning" }).inputValue()).toBe("-300.00");
  expect(await wordsOn(page)).not.toMatch(strange);
  expect(errors).toEqual([]);
  await context.close();
});

test("the outlook of a class says what it will bring month by month, and is taken over", async () => {
  const { context, page, errors } = await freshPage(story.browser, wide);
  // the dates ahead are those of the demo's year
  await page.clock.setFixedTime(new Date("2026-12-01T10:00:00Z"));
  await openMoney(page);
  const own = page.getByRole("listitem").filter({ hasText: "Count Thursday beginners" });
  await own.getByText("Takings as it grows, passes, and when the hall is paid").click();
  expect(await own.getByRole("button", { name: /^Take away what it brings later/ }).count()).toBe(2);
  await own.getByRole("button", { name: "Ask the outlook of Thursday beginners what it will bring" }).click();
  await own.getByText(/^Learned from \d+ sessions/).waitFor();
  await own.getByText(/^From \d+ January 2027: £[\d.]+ a session \(£[\d.]+ to £[\d.]+\)$/).waitFor();
  await own.getByRole("button", { name: "Take this over for Thursday beginners" }).click();
  // December to July
  await own.getByRole("button", { name: "Take away what it brings later, 8" }).waitFor();
  await saved(page);
  expect(await wordsOn(page)).not.toMatch(strange);
  expect(errors).toEqual([]);
  await context.close();
});

test("in dollars the estimates of the year and the state are told", async () => {
  const { context, page, errors } = await freshPage(story.browser, wide);
  await openMoney(page, "Open Cedar Fork, in dollars");
  const pot = part(page, "The tax pot");
  await pot.getByText(/as an estimate for the tax year from January 1, 2026/).waitFor();
  expect(
    await pot.getByRole("table", { name: "Days for tax, an estimate" }).getByText("Estimate").count(),
  ).toBeGreaterThan(2);
  expect(await wordsOn(page)).not.toMatch(strange);
  expect(errors).toEqual([]);
  await context.close();
});

test.each([
  ["a phone in the light", { ...phone, colorScheme: "light" as const }],
  ["a phone in the dark", { ...phone, colorScheme: "dark" as const }],
  ["a wide screen in the dark", { ...wide, colorScheme: "dark" as const }],
])("the money is held to WCAG 2.2 AA on %s", async (_name, look) => {
  const { context, page, errors } = await freshPage(story.browser, look);
  await openMoney(page);
  await part(page, "The tax pot")
    .getByText(/^Put aside/)
    .first()
    .waitFor();
  for (const summary of await page.locator("details > summary").all()) await summary.click();
  expect(await faultsOf(page)).toEqual([]);
  expect(errors).toEqual([]);
  await context.close();
});
