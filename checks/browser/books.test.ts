import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { freshPage, phone, wide } from "./chromium.ts";
import { faultsOf } from "./page-faults.ts";
import { recordOf } from "./record-story.ts";
import { storyServer } from "./story-server.ts";

const story = storyServer();

test("a hall's invoice, a studio's class, change for the cash box and a miscount go into the books, and all of it adds up", async () => {
  const { context, page, errors } = await freshPage(story.browser, wide);
  await openBooks(page);
  await page.getByText(/^Nothing is in the books from 6 April/).waitFor();

  await page.getByText("Your own money, put in or taken out").click();
  await write(page, "Your own money", "20", "Write this down");
  await page.getByText(/20\.00 GBP of your own money put in\./).waitFor();

  await page.getByText("A cost: a hall, cover, travel and the like").click();
  const cost = page.getByRole("form", { name: "A cost" });
  await cost.getByRole("button", { name: "Write this cost down" }).click();
  await cost.getByText("Write who is paid.").waitFor();
  await cost.getByRole("textbox", { name: "Paid to" }).fill("Tithe Barn");
  await cost
    .getByRole("combobox", { name: "Paid", exact: true })
    .selectOption({ label: "owed, to be paid later" });
  await write(page, "A cost", "27", "Write this cost down");
  await page.getByText("£27.00 is yet to pay. Open one when it is paid.").waitFor();
  await page.getByText("£27.00: hall hire, tithe barn").click();
  const hall = page.getByRole("form", { name: "Payment of hall hire, tithe barn" });
  await hall.getByRole("textbox", { name: "Paid now" }).fill("28");
  await hall.getByRole("button", { name: "Write this payment down" }).click();
  await hall.getByText("No more than 27.00 is unpaid. Write that or less.").waitFor();
  await hall.getByRole("textbox", { name: "Paid now" }).fill("27");
  await hall.getByRole("button", { name: "Write this payment down" }).click();
  await page.getByText("Nothing is written down as owed by you.").waitFor();

  // a cost written by mistake comes back and leaves nothing
  await cost.getByRole("combobox", { name: "Paid", exact: true }).selectOption({ label: "paid at once" });
  await write(page, "A cost", "9.90", "Write this cost down");
  await page.getByText("9.90 GBP for hall, paid.").waitFor();
  await cost
    .getByRole("combobox", { name: "Paid", exact: true })
    .selectOption({ label: "came back, or was written by mistake" });
  await write(page, "A cost", "9.90", "Write this cost down");
  await page.getByText("9.90 GBP for hall came back.").waitFor();

  await page.getByText("Work that is paid by invoice, like a class for a studio").click();
  await page.getByRole("textbox", { name: "Invoice, or whom it is for" }).fill("INV 7");
  await write(page, "Work paid by invoice", "30", "Write this work down");
  await page.getByText("£30.00: class for a studio, inv-7").click();
  await page.getByRole("button", { name: "Write this payment down" }).click();
  await page.getByText("Nobody owes you anything.").waitFor();

  // 20.00 in the cash box by the books, 17.50 counted
  await page.getByText("By the books the cash box holds £20.00").waitFor();
  await page.getByRole("textbox", { name: "Counted in the cash box" }).fill("17.50");
  await page.getByText(/^The box holds £2\.50 less than it should/).waitFor();
  await page.getByRole("button", { name: "Write the difference into the books" }).click();
  await page.getByText("By the books the cash box holds £17.50").waitFor();

  // 30.00 came in and 27.00 was paid; in hand 30 − 27 + 20 − 2.50 = 20.50
  await page.getByText(/30\.00 came in, £27\.00 was paid\.$/).click();
  await page.getByRole("row", { name: "change of the money in hand £20.50" }).waitFor();
  await page.getByText(/£30\.00 earned, £27\.00 of costs, £3\.00 left\.$/).click();
  await page.getByText(/^The books balance: all \d+ lines/).waitFor();
  expect(await faultsOf(page)).toEqual([]);

  await page.getByRole("link", { name: "Year end, to print or as a file" }).click();
  await page
    .getByText(
      /£30\.00 was received, £27\.00 was paid and £2\.50 was missing from the cash box: £0\.50 is left\./,
    )
    .waitFor();
  await page.getByRole("row", { name: /result by the trading allowance/ }).waitFor();
  const [file] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "The year as a file for a spreadsheet" }).click(),
  ]);
  const text = readFileSync(await file.path(), "utf8");
  expect(text).toContain("received,studio,30.00\r\nreceived,all,30.00\r\npaid,hall,27.00\r\n");
  expect(text).toContain("cash differences,,-2.50\r\n");
  expect(await faultsOf(page)).toEqual([]);
  expect(errors).toEqual([]);
  await context.close();
});

test("on a phone a place that was taught and not paid is told by name and paid from the books", async () => {
  const { context, page, errors } = await freshPage(story.browser, { ...phone, colorScheme: "dark" });
  const practice = await openBooks(page);
  const record = await recordOf(story.server.address, practice);
  const date = new Date().toISOString().slice(0, 10);
  await record.openDates("tuesday", [date]);
  await record.act({ kind: "meet person", person: "nell", contact: { name: "Nell Arkwright" } });
  const session = `story-tuesday.${date}`;
  // at the door, so that it is taught whatever time it is now
  await record.act({ kind: "walk in", session, place: "pl-nell", person: "nell", how: "single" });
  await page.reload();
  await page.getByText(/^£10\.00: Nell Arkwright, tuesday, /).click();
  await page.getByRole("button", { name: "Write this payment down" }).click();
  await page.getByText("Nobody owes you anything.").waitFor();
  await page.getByText(/^£10\.00 was taken on /).waitFor();
  expect(await faultsOf(page)).toEqual([]);
  expect(errors).toEqual([]);
  await context.close();
});

/** Begins a practice and opens its books; answers the practice's id. */
async function openBooks(page: Page): Promise<string> {
  await page.goto(story.server.address);
  await page.getByRole("textbox", { name: "Name of the practice" }).fill("Wren Ashdown");
  await page.getByRole("button", { name: "Begin", exact: true }).click();
  await page.getByRole("heading", { name: "Classes", level: 1 }).waitFor();
  const practice = /practice\/([^/]+)/.exec(page.url())?.[1] ?? "";
  await page.goto(`${story.server.address}/practice/${practice}/books`);
  await page.getByRole("heading", { name: "The books", level: 1 }).waitFor();
  return practice;
}

async function write(page: Page, form: string, amount: string, button: string): Promise<void> {
  const fields = page.getByRole("form", { name: form });
  await fields.getByRole("textbox", { name: "How much" }).fill(amount);
  await fields.getByRole("button", { name: button }).click();
}
