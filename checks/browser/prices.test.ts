import type { Browser, Locator, Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { freshPage, openChromium, phone, wide, wordsOn } from "./chromium.ts";
import { forget, type RunningServer, startServer } from "./hallful-server.ts";

let browser: Browser;
let server: RunningServer;

beforeAll(async () => {
  [browser, server] = await Promise.all([openChromium(), startServer()]);
});

afterAll(async () => {
  await browser.close();
  await server.stop();
  forget(server.data);
});

async function openDemo(page: Page): Promise<void> {
  await page.goto(server.address);
  await page.getByRole("button", { name: "Open Marlsford, in pounds" }).click();
  await page.getByRole("heading", { name: "Classes", level: 1 }).waitFor();
}

/** A part of the class sheet by its title. */
function part(page: Page, title: string): Locator {
  return page.getByRole("region", { name: title, exact: true });
}

async function fill(field: Locator, text: string): Promise<void> {
  await field.fill(text);
  await field.press("Tab");
}

test("a pass, how sure an evening is, the price and the studio answer as figures change, and are kept", async () => {
  const { context, page, errors } = await freshPage(browser, wide);
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

test("halls are compared for a class on a phone, a figure opens into its sum, and free hours count", async () => {
  const { context, page, errors } = await freshPage(browser, phone);
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

  await page
    .getByRole("combobox", { name: "In the order of what is left by" })
    .selectOption("an hour from door to door");
  await page.getByText(/leaves most an hour from door to door/).waitFor();
  expect(await wordsOn(page)).not.toMatch(/NaN|undefined|Infinity/);
  expect(errors).toEqual([]);
  await context.close();
});
