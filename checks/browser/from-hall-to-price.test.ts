import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { freshPage, openChromium, wide, wordsOn } from "./chromium.ts";
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

async function fill(page: Page, label: string, text: string): Promise<void> {
  const field = page.getByRole("textbox", { name: label, exact: true });
  await field.fill(text);
  await field.press("Tab");
}

async function beginPractice(page: Page): Promise<void> {
  await page.goto(server.address);
  await fill(page, "Name of the practice", "Wren Ashdown");
  await page.getByRole("button", { name: "Begin", exact: true }).click();
  await page.getByRole("heading", { name: "Classes" }).waitFor();
}

async function drawHall(page: Page): Promise<void> {
  await page.getByRole("link", { name: "Halls" }).click();
  await page.getByRole("button", { name: "Draw a hall" }).click();
  await fill(page, "Width left to right on the drawing", "7.5");
  await fill(page, "Length bottom to top on the drawing", "11 m");
  await page.getByRole("button", { name: "Draw this floor" }).click();
  await fill(page, "Name of the hall", "Bellwether Rooms");
  await fill(page, "The hall’s posted number", "60");
  await fill(page, "Rate", "14");
  await fill(page, "The least that is charged", "60");
  await fill(page, "Charged in steps of", "30");
}

async function writeClass(page: Page): Promise<void> {
  await page.getByRole("link", { name: "Classes" }).click();
  await page.getByRole("button", { name: "Begin a class" }).click();
  await fill(page, "Name of the class", "Tuesday slow flow");
  for (const [label, text] of [
    ["Setting up", "20"],
    ["The class", "75"],
    ["Packing away", "15"],
    ["People on an ordinary evening", "9"],
    ["Costs of the year that this class should carry", "250"],
  ] as const)
    await fill(page, label, text);
  const evening = page.getByRole("region", { name: "What an evening costs" });
  await evening
    .getByRole("group", { name: "Minutes of an evening" })
    .getByRole("textbox", { name: "Travel" })
    .fill("40");
  await evening
    .getByRole("group", { name: "What else it costs" })
    .getByRole("textbox", { name: "Travel" })
    .fill("3");
  await page.getByLabel("The year begins", { exact: true }).fill("2027-01-05");
  await page.getByLabel("The year ends", { exact: true }).fill("2027-03-23");
}

async function answersStand(page: Page): Promise<void> {
  // 3 lines of mats turned across 7.5 m: (7.5 − 1 + 0.3) ÷ 2.13 = 3.2; 9 along 11 m: (11 − 1 + 0.5) ÷ 1.11 = 9.5
  await page.getByText("27 mats fit").first().waitFor();
  // answers follow the last key a moment later, all in one go
  await page
    .getByText(/^A year of 10 evenings/)
    .first()
    .waitFor();
  const words = await wordsOn(page);
  // 20 + 75 + 15 = 110 min, in steps of 30: 120 min at 14.00 an hour is 28.00; with 3.00 travel 31.00
  expect(words).toContain("An evening costs £31.00");
  // 0.3 × 10 + 0.5 × 8.50 + 0.15 × 8 + 0.05 × 0 = 8.45; less 0.20 a head 8.25; 31 ÷ 8.25 = 3.76
  expect(words).toContain("4 people pay for the room");
  expect(words).toContain("£8.45");
  // 9 × 8.25 − 31 = 43.25; over 40 + 110 minutes from door to door: 43.25 ÷ 2.5 = 17.30
  expect(words).toMatch(/9 people leaves £43\.25, £17\.30 for each hour from door to door/);
  // 12 Tuesdays from 5 January to 23 March 2027, less 16 February and 23 March: 10 × 43.25 − 250 = 182.50
  expect(words).toMatch(/A year of 10 evenings .* leaves £182\.50/);
}

test("from an empty practice to what a year leaves, closed and found again", async () => {
  const { context, page, errors } = await freshPage(browser, wide);
  await beginPractice(page);
  await drawHall(page);
  await page.getByText("27 mats fit").first().waitFor();
  await writeClass(page);
  await answersStand(page);
  await page
    .getByText(/^Saved/)
    .first()
    .waitFor();
  expect(errors).toEqual([]);
  await context.close();

  await server.stop();
  server = await startServer(server.data);
  const again = await freshPage(browser, wide);
  await again.page.goto(server.address);
  await again.page.getByRole("link", { name: /Wren Ashdown/ }).click();
  await again.page.getByRole("link", { name: /Tuesday slow flow/ }).click();
  await answersStand(again.page);
  expect(again.errors).toEqual([]);
  await again.context.close();
});
