import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { freshPage, phone, wide, wordsOn } from "./chromium.ts";
import { fill, part } from "./page-parts.ts";
import { storyServer } from "./story-server.ts";

const story = storyServer();

async function openDemo(page: Page): Promise<void> {
  await page.goto(story.server.address);
  await page.getByRole("button", { name: "Open Marlsford, in pounds" }).click();
  await page.getByRole("heading", { name: "Classes", level: 1 }).waitFor();
}

test("a pass, how sure an evening is, the price and the studio answer as figures change, and are kept", async () => {
  const { context, page, errors } = await freshPage(story.browser, wide);
  await openDemo(page);
  await page.getByRole("link", { name: "Thursday beginners" }).click();
  const passes = part(page, "How long a pass runs");
  // published: 5 classes at 75 % with 85 of 100 sure are 8 teaching weeks, 10 are 15
  await fill(passes.getByRole("textbox", { name: "Of 100 evenings, a holder comes to" }), "75");
  await passes.getByText("A pass of 5 should run for 8 teaching weeks").waitFor();
  await passes.getByText("A pass of 10 should run for 15 teaching weeks").first().waitFor();

  const sure = part(page, "How sure an evening is");
  await fill(sure.getByRole("textbox", { name: "How uneven evenings are" }), "1");
  await sure.getByText(/^An evening loses money with a chance of/).waitFor();
  await expect.poll(() => sure.getByText("by chance alone it would be").count()).toBe(0);
  expect(await sure.getByRole("img").count()).toBe(1);

  const curve = part(page, "Which price");
  await curve.getByText("Which price would leave most nobody can say yet.").waitFor();
  const add = curve.getByRole("button", { name: "Add a price and how many would come" });
  await add.click();
  await curve.getByText("A curve needs heads at two different prices").first().waitFor();
  await add.click();
  await fill(curve.getByRole("textbox", { name: "At a single of" }).nth(1), "12");
  await fill(curve.getByRole("textbox", { name: "would like to come" }).nth(1), "9");
  await curve.getByText("as many or more people come when it costs more").first().waitFor();
  await fill(curve.getByRole("textbox", { name: "would like to come" }).nth(1), "4");
  await curve
    .getByText(/leaves most/)
    .first()
    .waitFor();
  await curve
    .getByRole("textbox", { name: "Prices nearby" })
    .fill("Plum Yard; 11.00\nHartsmoor Baths; $7.50");
  await curve.getByText("Line 2: $7.50 is not in GBP").waitFor();
  await curve.getByRole("textbox", { name: "Prices nearby" }).fill("Plum Yard; 11.00\nHartsmoor Baths; 7.50");
  await curve.getByText("2 prices nearby run from £7.50 to £11.00; the middle one is £9.25.").waitFor();

  const studio = part(page, "Own class or studio");
  await studio.getByRole("checkbox", { name: "Compare with what a studio offers" }).check();
  await studio.getByText(/is the better hour/).waitFor();
  await studio.getByRole("combobox", { name: "It pays" }).selectOption("a share of what people pay");
  await fill(studio.getByRole("textbox", { name: "Your share" }), "60");
  await studio.getByText(/is the better hour/).waitFor();

  const change = part(page, "What would change this");
  await change.getByText("Whether your own class or the studio is the better hour").waitFor();
  expect(await change.getByText("a guess", { exact: false }).count()).toBeGreaterThan(0);

  await page
    .getByText(/^Saved/)
    .first()
    .waitFor();
  await page.reload();
  await part(page, "Which price").getByText("2 prices nearby run from £7.50").waitFor();
  expect(
    await part(page, "Own class or studio").getByRole("textbox", { name: "Your share" }).inputValue(),
  ).toBe("60");
  expect(await wordsOn(page)).not.toMatch(/NaN|undefined|Infinity/);
  expect(errors).toEqual([]);
  await context.close();
});

test("a course, what people can pay, a rise, a wanted pay and owed classes answer, and a slip is told at its field", async () => {
  const { context, page, errors } = await freshPage(story.browser, phone);
  await openDemo(page);
  await page.getByRole("link", { name: "Thursday beginners" }).click();
  const prices = part(page, "Prices");
  // 48.00 ÷ 6 = 8.00, with 4 left 32.00
  await prices.getByText(/^A course of 6 for £48\.00: who joins with 4 left pays £32\.00/).waitFor();
  await fill(prices.getByRole("textbox", { name: "Price of the course" }), "60");
  await prices.getByText(/^Course of 6 costs £10\.00 a class, no less than £9\.00 with a single\./).waitFor();
  await fill(prices.getByRole("textbox", { name: "Price of the course" }), "$48");
  await prices
    .getByText("$48 is not in GBP. Give it in GBP: all amounts here are in one currency.")
    .waitFor();
  await fill(prices.getByRole("textbox", { name: "Price of the course" }), "51");
  await prices.getByText(/^A course of 6 for £51\.00/).waitFor();
  await fill(prices.getByRole("textbox", { name: "Pay what you can, at least" }), "4");
  await fill(prices.getByRole("textbox", { name: "People then give" }), "3");
  await prices.getByText("People cannot give less on average than the floor.").first().waitFor();
  await fill(prices.getByRole("textbox", { name: "People then give" }), "6");
  await fill(prices.getByRole("textbox", { name: "Paid by the month" }), "7.50");
  await prices
    .getByText(/^Paid by the month, 38 sessions a year at £7\.50 are £285\.00: twelve payments of £23\.75/)
    .waitFor();
  await fill(prices.getByRole("textbox", { name: "come on a course of 6" }), "10");
  await prices.getByText("10 of 100 people are counted twice.").waitFor();
  await fill(prices.getByRole("textbox", { name: "pay a single" }), "30");
  // 0.3 × 9 + 0.3 × 8.40 + 0.2 × 7.80 + 0.05 × 7 + 0.1 × 8.50 = 7.98
  await prices.getByText("One person brings £7.98 on average over all ways of paying.").waitFor();

  const higher = part(page, "A higher price");
  await fill(higher.getByRole("textbox", { name: "Put the single up by" }), "1");
  // 1.00 ÷ (10.00 − 0.20) = 10.2 %
  await higher
    .getByText(
      /^With the single at £10\.00 instead of £9\.00 an evening stays level while no more than 10\.2 %/,
    )
    .waitFor();
  await fill(higher.getByRole("textbox", { name: "What you want for an hour" }), "20");
  await higher
    .getByText(/^For £20\.00 an hour from door to door after 20 % tax one person must bring/)
    .waitFor();

  const passes = part(page, "How long a pass runs");
  await passes.getByRole("button", { name: "Add passes that are out" }).click();
  await fill(passes.getByRole("textbox", { name: "Left over all of them" }), "9");
  await passes
    .getByText("A pass of 5 cannot have 9 classes left. Give a whole number from 0 to 5.")
    .first()
    .waitFor();
  await fill(passes.getByRole("textbox", { name: "How many", exact: true }), "4");
  // 42.00 ÷ 5 × 9 = 75.60
  await passes.getByText("You owe 9 classes, £75.60 in all: a debt until they are taken.").waitFor();
  expect(await wordsOn(page)).not.toMatch(/NaN|undefined|Infinity/);
  expect(errors).toEqual([]);
  await context.close();
});

test("halls are compared for a class on a phone, a figure opens into its sum, and free hours count", async () => {
  const { context, page, errors } = await freshPage(story.browser, phone);
  await openDemo(page);
  await page.getByRole("navigation", { name: "Places" }).getByRole("link", { name: "Halls" }).click();
  await page.getByRole("link", { name: "Compare halls for a class" }).click();
  await page.getByRole("combobox", { name: "Class" }).selectOption({ label: "Tuesday evening, mixed" });
  await page.getByText(/^With 11 people who would like to come, /).waitFor();
  const barn = page.getByRole("button", { name: /a year in Tithe Barn Hall/ }).first();
  await barn.click();
  const sum = page.getByRole("table", { name: "A year in Tithe Barn Hall" });
  await sum.getByText("39 of 46 dates").waitFor();
  expect(await barn.getAttribute("aria-expanded")).toBe("true");

  await page.getByText("Tithe Barn Hall – the way there and when it can be had").click();
  const ways = page.getByRole("region", { name: "The way to each, and when it can be had" });
  await ways.getByRole("button", { name: "Add free hours" }).last().click();
  // set-up for a class at 19:00 begins at 18:40
  await ways.getByLabel("From", { exact: true }).last().fill("18:50");
  await page.getByText(/^Tithe Barn Hall is left out: it is not free on Tuesday 19:00 from 18:40/).waitFor();
  await ways.getByLabel("From", { exact: true }).last().fill("18:30");
  await barn.waitFor();

  await ways.getByRole("button", { name: "Add a term" }).last().click();
  await ways.getByLabel("Until", { exact: true }).last().fill("2026-12-18");
  await page
    .getByText(/to days outside its terms/)
    .first()
    .waitFor();
  await page.getByRole("button", { name: "Add a time" }).click();
  await page.getByRole("checkbox", { name: "In straight lines" }).check();
  await page.getByRole("checkbox", { name: "In rings around the teacher" }).check();
  await page
    .getByRole("button", { name: /a year in Tithe Barn Hall \(in rings, Tuesday 19:00\)/ })
    .first()
    .waitFor();
  await page
    .getByText(/\(Wednesday 19:00\) is left out: it is not free on Wednesday 19:00/)
    .first()
    .waitFor();

  const free = page.getByRole("region", { name: "Which halls are free?" });
  await free.getByLabel("From").fill("18:00");
  await free.getByLabel("Until").fill("19:30");
  await free.getByText(/^On Tuesdays from 18:00 to 19:30 /).waitFor();
  await free.getByText("only 18:30 to 22:00").waitFor();

  await page
    .getByRole("combobox", { name: "In the order of what is left by" })
    .selectOption("an hour from door to door");
  await page.getByText(/leaves most an hour from door to door/).waitFor();
  expect(await wordsOn(page)).not.toMatch(/NaN|undefined|Infinity/);
  expect(errors).toEqual([]);
  await context.close();
});
