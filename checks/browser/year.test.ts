import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { freshPage, phone, wide, wordsOn } from "./chromium.ts";
import { faultsOf } from "./page-faults.ts";
import { storyServer } from "./story-server.ts";

const story = storyServer();
const hallCalendar = join(import.meta.dirname, "../../apps/cli/golden/tithe-barn.ics");

async function openYear(page: Page, demo = "Open Marlsford, in pounds"): Promise<void> {
  await page.goto(story.server.address);
  await page.getByRole("button", { name: demo }).click();
  await page.getByRole("heading", { name: "Classes", level: 1 }).waitFor();
  await page.goto(page.url().replace(/classes$/, "year"));
  await page.getByText(/ you teach in \d+ of \d+ weeks: /).waitFor();
}

function allDay(title: string, day: string): readonly string[] {
  return ["BEGIN:VEVENT", `UID:${day}`, `SUMMARY:${title}`, `DTSTART;VALUE=DATE:${day}`, "END:VEVENT"];
}

test("a pasted list, time off and a hall's own calendar take dates, and each says why", async () => {
  const { context, page, errors } = await freshPage(story.browser, wide);
  await openYear(page);
  const tuesdays = page.getByText(/^Tuesday evening, mixed: \d+ sessions, of 46 Tuesdays/);
  // a supper and the blood donors
  await page
    .getByText(/The calendar of Tithe Barn Hall clashes with 2 sessions of Tuesday evening, mixed/)
    .waitFor();
  await page.getByLabel("School holidays, as a list").fill("Half-term 26/10/2026 - 30/10/2026\nnext spring");
  await page.getByText("Line 2, “next spring”, is not understood: there is no date in it.").waitFor();

  const school = ["BEGIN:VCALENDAR", ...allDay("INSET day", "20260910"), ...allDay("Sports day", "20260911")];
  const file = { name: "school.ics", mimeType: "text/calendar", buffer: Buffer.from(school.join("\r\n")) };
  await page.getByLabel("The school’s calendar, as a file (.ics)").setInputFiles(file);
  await page
    .getByText("“school.ics” has 1 holiday in this year: INSET day. Left out as no holiday: Sports day.")
    .waitFor();
  await page.getByRole("button", { name: "Take these in" }).click();
  expect(await page.getByRole("group", { name: "School holidays" }).getByLabel("Why").inputValue()).toBe(
    "INSET day",
  );

  await page.getByRole("button", { name: "Add time off" }).click();
  const row = page.getByRole("group", { name: "Your time off" });
  await row.getByLabel("Why").last().fill("by the sea");
  await row.getByLabel("Last day").last().fill("2026-09-20");
  // 10 and 17 September, and 10 June, which the demo has
  await page.getByText(/^Thursday beginners: .* 3 in your time off/).waitFor();

  await page.getByText(/^Tithe Barn Hall: /).click();
  await page.getByLabel("The calendar of Tithe Barn Hall, as a file (.ics)").setInputFiles(hallCalendar);
  await page.getByText(/^“tithe-barn.ics” has \d+ bookings in this year/).waitFor();
  await page.getByText("Line 28: “20270231” of “Whist drive” is no time (DTSTART).").waitFor();
  await page.getByRole("button", { name: "Count these instead of those before" }).click();
  await tuesdays.filter({ hasText: "when others have the hall" }).waitFor();
  await page
    .getByText(/^Why \d+ dates are missing$/)
    .first()
    .click();
  expect(await wordsOn(page)).not.toMatch(/NaN|undefined|\[object/);
  expect([await faultsOf(page), errors]).toEqual([[], []]);
  await context.close();
});

const entry = (text: string) => {
  const [, id] = /UID:(20261212-saturday-long@\S+)/.exec(text) ?? [];
  const part = text.split("BEGIN:VEVENT").find((it) => id !== undefined && it.includes(id)) ?? "";
  return { id, day: /DTSTART:(\d{8})/.exec(part)?.[1], sequence: Number(/SEQUENCE:(\d+)/.exec(part)?.[1]) };
};

test("a moved session moves in the calendar file under its id, and the address can be taken back", async () => {
  const { context, page, errors } = await freshPage(story.browser, { ...wide, acceptDownloads: true });
  await openYear(page);
  const saved = async (): Promise<string> => {
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: "Save for a calendar program" }).click(),
    ]);
    return readFileSync(await download.path(), "utf8");
  };
  // the demo has moved this Saturday to the Sunday after it
  const first = entry(await saved());
  expect(first.day).toBe("20261213");
  const changes = page.getByRole("group", { name: "Single sessions" });
  await changes.getByLabel("To", { exact: true }).fill("2026-12-14");
  await page.getByText("Saved").first().waitFor();
  const second = entry(await saved());
  expect([second.id, second.day]).toEqual([first.id, "20261214"]);
  expect(second.sequence).toBeGreaterThan(first.sequence);

  await page.getByText("Let a calendar program follow the year").click();
  await page.getByRole("button", { name: "Make an address" }).click();
  const address = await page.getByLabel("The address of your calendar").inputValue();
  await page.getByText(/^Saved \d/).waitFor();
  const followed = await fetch(address);
  expect([followed.status, entry(await followed.text()).day]).toEqual([200, "20261214"]);
  await page.getByRole("button", { name: "Take it back" }).click();
  await page.getByText(/^Saved \d/).waitFor();
  await expect.poll(async () => (await fetch(address)).status).toBe(404);
  expect(errors).toEqual([]);
  await context.close();
});

test("on a phone the year of Cedar Fork reads in its own order of dates, with American holidays, dark as well", async () => {
  const { context, page, errors } = await freshPage(story.browser, {
    ...phone,
    locale: "en-US",
    colorScheme: "dark",
  });
  await openYear(page, "Open Cedar Fork, in dollars");
  await page.getByText(/^From [A-Z][a-z]+ \d+, \d{4} to /).waitFor();
  await page.getByText(/^The \d+ days that count as public holidays$/).click();
  await page.getByText("Friday, November 27, 2026: Day after Thanksgiving").waitFor();
  const months = page.getByRole("img");
  expect(await months.count()).toBeGreaterThan(8);
  expect(await months.first().getAttribute("aria-label")).toMatch(/^[A-Z][a-z]+ 2026\. A, /);
  // a line half typed is told only when the box is left
  const list = page.getByLabel("Your time off, as a list");
  await list.pressSequentially("at the lake in Aug");
  await page.waitForTimeout(700);
  const told = page.getByText("Line 1, “at the lake in Aug”, is not understood: there is no date in it.");
  expect(await told.count()).toBe(0);
  await list.press("Tab");
  await told.waitFor();
  expect([await faultsOf(page), errors]).toEqual([[], []]);
  await context.close();
});
