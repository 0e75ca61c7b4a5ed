import { AxeBuilder } from "@axe-core/playwright";
import { join } from "node:path";
import type { Locator, Page } from "playwright-core";
import { expect, test } from "vitest";
import { freshPage, phone, wide, wordsOn } from "./chromium.ts";
import { storyServer } from "./story-server.ts";

const story = storyServer();

async function openDemo(page: Page): Promise<void> {
  await page.goto(story.server.address);
  await page.getByRole("button", { name: "Open Marlsford, in pounds" }).click();
  await page.getByRole("heading", { name: "Classes", level: 1 }).waitFor();
}

/** The record of a class, with the panel for files open. */
async function openPanel(page: Page, className: string): Promise<Locator> {
  await page.getByRole("link", { name: className }).click();
  const going = page.getByRole("region", { name: "How it is going", exact: true });
  await going.getByText("Bring in sessions from a file or pasted rows").click();
  return going;
}

/** A file as old spreadsheets write it: one byte for each letter. */
function oldFile(name: string, text: string) {
  return { name, mimeType: "text/csv", buffer: Buffer.from(text, "latin1") };
}

async function soundOn(page: Page): Promise<void> {
  const seen = await new AxeBuilder({ page })
    .withTags(["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"])
    .analyze();
  expect(seen.violations.map((it) => `${it.id}: ${it.nodes[0]?.html ?? ""}`)).toEqual([]);
  expect(await wordsOn(page)).not.toMatch(/NaN|undefined|Infinity/);
  expect(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth)).toBe(true);
}

/** Saved by the server: what was taken in is asked of it, not of the page. */
async function sessionsKept(
  page: Page,
): Promise<readonly { readonly date: string; readonly heads: number }[]> {
  const [practice = ""] = /(?<=practice\/)[^/]+/.exec(page.url()) ?? [];
  const read = await page.request.get(`${story.server.address}/api/practices/${practice}`);
  const whole: {
    readonly happened: readonly {
      readonly id: string;
      readonly document: { readonly sessions: readonly { readonly date: string; readonly heads: number }[] };
    }[];
  } = await read.json();
  return whole.happened.find(({ id }) => page.url().includes(id))?.document.sessions ?? [];
}

test("pasted rows are looked over, taken in, asked about where the record differs, and taken back", async () => {
  const { context, page, errors } = await freshPage(story.browser, phone);
  await openDemo(page);
  const going = await openPanel(page, "Tuesday evening, mixed");
  // the record of the demo has 8 September with 8 people and 15 September with 9
  await going
    .getByLabel("Or paste rows")
    .fill(
      "Date;Came;Places;Full, sent home\n8/9/2026;8;16;\n15/9/2026;10;16;\n22/9/2026;twelve;16;\n1/9/2026;6;16;\n25/8/2026;7,0;16;0\n18/8/2026;19;16;\n",
    );
  await going.getByRole("button", { name: "Read what is pasted" }).click();
  await going
    .getByText(
      "What you pasted: 2 new sessions; 1 date in the record with the same figures; 1 date in the record with other figures; 2 rows left out.",
    )
    .waitFor();
  expect(
    await going.getByRole("combobox", { name: "Turned away" }).locator("option:checked").innerText(),
  ).toBe("Full, sent home");
  await going.getByText("2 rows are left out: see which, and why").click();
  const left = going.getByRole("table", { name: "Rows left out" });
  expect(await left.getByRole("row").allInnerTexts()).toEqual([
    "Row\tValue\tWhy",
    "4\tCame: “twelve”\tIt is not a number.",
    "7\tCame: “19”\tMore came than the 16 that it holds.",
  ]);
  await soundOn(page);

  expect(await going.getByRole("radio", { name: "Keep what is there: 9 came, 4 new" }).isChecked()).toBe(
    true,
  );
  await going.getByRole("button", { name: "Take in" }).click();
  await going.getByText("2 sessions taken in.").waitFor();
  await expect.poll(async () => (await sessionsKept(page)).length).toBe(13);
  expect((await sessionsKept(page)).find(({ date }) => date === "2026-09-15")?.heads).toBe(9);

  await going.getByRole("button", { name: "Take it back" }).click();
  await expect.poll(async () => (await sessionsKept(page)).length).toBe(11);

  await going.getByLabel("Or paste rows").fill("Date;Came\n15/9/2026;10\n");
  await going.getByRole("button", { name: "Read what is pasted" }).click();
  await going.getByRole("radio", { name: "Take the file’s: 10 came, 4 new" }).check();
  await going.getByRole("button", { name: "Take in" }).click();
  await going.getByText("1 session replaced.").waitFor();
  const heads = async () => (await sessionsKept(page)).find(({ date }) => date === "2026-09-15")?.heads;
  await expect.poll(heads).toBe(10);
  await going.getByRole("button", { name: "Take it back" }).click();
  await expect.poll(heads).toBe(9);
  expect(errors).toEqual([]);
  await context.close();
});

test("an old spreadsheet's file with dates that can be read both ways asks; its columns can be chosen", async () => {
  const { context, page, errors } = await freshPage(story.browser, wide);
  await openDemo(page);
  const going = await openPanel(page, "Thursday beginners");
  const file = going.getByLabel("Choose a file of sessions");
  await file.setInputFiles(
    oldFile("café.csv", "Tag;Besuch;Plätze;Neu im Café\n03/09/2026;9;12;4\n06/08/2026;6;12;2\n"),
  );
  await going.getByText(/: something must be said before it can be read\./).waitFor();
  expect(await going.getByRole("columnheader", { name: "Neu im Café" }).count()).toBe(1);
  await going.getByRole("combobox", { name: "People who came" }).selectOption({ label: "Besuch" });
  await going.getByRole("combobox", { name: "Places" }).selectOption({ label: "Plätze" });
  await going.getByText(/^The dates may have the day or the month first/).waitFor();
  await going
    .getByRole("combobox", { name: "In a date like 3/9 the first figure is" })
    .selectOption("the day");
  await going.getByRole("row", { name: /^6 August 2026 6/ }).waitFor();
  await going
    .getByRole("combobox", { name: "In a date like 3/9 the first figure is" })
    .selectOption("the month");
  await going.getByRole("row", { name: /^8 June 2026 6/ }).waitFor();
  await going
    .getByRole("combobox", { name: "There for the first time" })
    .selectOption({ label: "Neu im Café" });
  await going.getByRole("row", { name: /^8 June 2026 6 12 2/ }).waitFor();
  await soundOn(page);

  await going.getByRole("button", { name: "Leave it" }).click();
  for (const [name, bytes, says] of [
    ["empty.csv", Buffer.alloc(0), "The file is empty."],
    ["sessions.xlsx", Buffer.from([0x50, 0x4b, 3, 4, 20, 0]), "a spreadsheet or another packed file"],
    ["noise.csv", Buffer.from([1, 2, 3, 0, 255, 0, 7, 9]), "The file is no text."],
    ["names.csv", Buffer.from("Date;Came\n"), "There is no row with values in it."],
  ] as const) {
    await file.setInputFiles({ name, mimeType: "text/csv", buffer: bytes });
    await going.getByRole("alert").getByText(says).waitFor();
    expect(await going.getByRole("button", { name: "Take in" }).isDisabled()).toBe(true);
    await going.getByRole("button", { name: "Leave it" }).click();
  }
  expect(errors).toEqual([]);
  await context.close();
});

test("who is still coming is told by name, with no signal, and nothing of the list is sent", async () => {
  const { context, page, errors } = await freshPage(story.browser, phone);
  await openDemo(page);
  await page.evaluate(async () => navigator.serviceWorker.ready);
  await page.getByRole("navigation", { name: "Places" }).getByRole("link", { name: "People" }).click();
  await page.getByRole("link", { name: "Who is still coming" }).click();
  await page.getByText("The names stay on this device.").waitFor();
  await soundOn(page);
  await page.reload();
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  const sent: string[] = [];
  page.on("request", (request) => {
    if (request.method() !== "GET") sent.push(request.url());
  });
  await context.setOffline(true);
  const demo = join(import.meta.dirname, "../../demo/files/tuesday-visits.csv");
  await page.getByLabel("Choose a file of visits").setInputFiles(demo);
  await page
    .getByText(
      "29 people came 123 times until 24 November 2026; 7 of them have not been seen for 4 teaching weeks or more.",
    )
    .waitFor();
  await page.getByText(/^Owen Thrale came 2 times, last 9 teaching weeks ago/).waitFor();
  await page
    .getByRole("combobox", { name: "Weeks off" })
    .selectOption({ label: "as in Tuesday evening, mixed" });
  // half-term in October is no week of absence
  await page.getByText(/^Owen Thrale came 2 times, last 8 teaching weeks ago/).waitFor();
  const names = (await page.getByRole("listitem").allInnerTexts()).map((it) => it.split(" came ")[0] ?? "");
  expect(names).toHaveLength(7);
  expect(names).toEqual(names.toSorted());
  await page.getByRole("combobox", { name: "Show" }).selectOption("everybody");
  await page.getByText("1 to 25 of 29 people.").waitFor();
  await page.getByRole("button", { name: "Names after" }).click();
  await page.getByText("26 to 29 of 29 people.").waitFor();
  await page.getByLabel("Find a name").fill("zoë");
  await page.getByText(/^Zoë Penn came/).waitFor();
  await page.getByText("Show each week").click();
  await page.getByRole("table", { name: "Of those who began, still coming" }).waitFor();
  const renewals = page.getByRole("region", { name: "Where people renew: passes, blocks and terms" });
  await renewals.getByText(/^By the fit .* stay through the first month/).waitFor();
  await renewals.getByRole("combobox", { name: "A period is" }).selectOption("a year");
  await renewals.getByText(/^Nobody was watched through a year/).waitFor();
  await renewals.getByRole("combobox", { name: "A period is" }).selectOption("a teaching week");
  await renewals.getByRole("combobox", { name: "Gone is who was not seen for" }).selectOption("4 periods");
  await renewals.getByText(/^By the fit .* stay through the first teaching week/).waitFor();
  await renewals.getByText("Show each period").click();
  await page.getByRole("table", { name: "Of those who began, there through each period" }).waitFor();
  expect(await page.getByRole("img").count()).toBe(1);
  await page.getByText("These are chances from dates alone, for the teacher’s own eyes").waitFor();
  await soundOn(page);

  await page.getByRole("button", { name: "Keep it on this device" }).click();
  await page.getByText(/is kept in this browser on this device until you forget it/).waitFor();
  await page.reload();
  await page.getByRole("button", { name: "Open the list kept on this device" }).click();
  await page.getByText(/^29 people came 123 times/).waitFor();
  await page.getByRole("button", { name: "Forget this list" }).click();
  await page.getByLabel("Choose a file of visits").waitFor();
  await page.reload();
  await page.getByLabel("Choose a file of visits").waitFor();
  expect(await page.getByRole("button", { name: "Open the list kept on this device" }).count()).toBe(0);
  expect(await wordsOn(page)).not.toContain("Thrale");
  expect(sent).toEqual([]);
  // with no signal the browser itself notes that it has none
  expect(errors.filter((it) => !it.includes("ERR_INTERNET_DISCONNECTED"))).toEqual([]);
  await context.close();
});

test("a class without a record takes its first sessions with no signal and asks how many places there are", async () => {
  const { context, page, errors } = await freshPage(story.browser, phone);
  await openDemo(page);
  const going = await openPanel(page, "Saturday long");
  await going.getByLabel("Or paste rows").fill("Date\tCame\tNew\n05/09/2026\t7\t7\n19/09/2026\t13\t4\n");
  await going.getByRole("button", { name: "Read what is pasted" }).click();
  const places = going.getByRole("textbox", { name: "Places, where a row has none" });
  await places.fill("twelve");
  await going.getByText("“twelve” is not a number.").waitFor();
  await places.fill("12");
  await going.getByText("What you pasted: 1 new session; 1 row left out.").waitFor();
  await places.fill("14");
  await going.getByText("What you pasted: 2 new sessions.").waitFor();
  await context.setOffline(true);
  await going.getByRole("button", { name: "Take in" }).click();
  await going.getByText("2 sessions taken in.").waitFor();
  await going
    .getByText(/Kept on this device/)
    .first()
    .waitFor();
  expect(await sessionsKept(page)).toEqual([]);
  await context.setOffline(false);
  await expect.poll(async () => (await sessionsKept(page)).map(({ heads }) => heads)).toEqual([7, 13]);
  expect(errors.filter((it) => !it.includes("ERR_INTERNET_DISCONNECTED"))).toEqual([]);
  await context.close();
});

/** Invented people who begin in some week of two years, miss weeks and stop: hardly two come alike. */
function manyVisits(people: number): string {
  const monday = Date.UTC(2025, 0, 6);
  let seed = 1;
  // Park and Miller's generator
  const chance = () => {
    seed = (seed * 48_271) % 2_147_483_647;
    return seed / 2_147_483_647;
  };
  const rows: string[] = [];
  for (let person = 0; person < people; person += 1) {
    const comes = 0.3 + 0.6 * chance();
    for (let week = Math.floor(96 * chance()); week < 98; week += 1) {
      if (chance() > comes) continue;
      const day = new Date(monday + week * 7 * 86_400_000).toISOString().slice(0, 10);
      rows.push(`Person ${String(person).padStart(5, "0")},${day}`);
      if (chance() < 0.1) break;
    }
  }
  return `Name,Date\n${rows.join("\n")}\n`;
}

test("ten thousand people are worked out beside the page, which can stop it and goes on", async () => {
  const { context, page, errors } = await freshPage(story.browser, wide);
  await openDemo(page);
  await page.getByRole("navigation", { name: "Places" }).getByRole("link", { name: "People" }).click();
  await page.getByRole("link", { name: "Who is still coming" }).click();
  await page.getByLabel("Choose a file of visits").setInputFiles({
    name: "many.csv",
    mimeType: "text/csv",
    buffer: Buffer.from(manyVisits(10_000)),
  });
  await page.getByText(/^Working out \d+ visits/).waitFor();
  await page.getByRole("button", { name: "Stop" }).click();
  await page.getByText("Stopped before it was worked out.").waitFor();
  await page.getByRole("combobox", { name: "Look ahead" }).selectOption("4 teaching weeks");
  await page.getByText(/^9\d\d\d people came \d+ times/).waitFor({ timeout: 80_000 });
  await page.getByText(/^In the next 4 teaching weeks/).waitFor();
  await page.getByText(/^1 to 25 of \d+ people\.$/).waitFor();
  await page.getByRole("combobox", { name: "Show" }).selectOption("everybody");
  await page.getByText(/^1 to 25 of 9\d\d\d people\.$/).waitFor();
  expect(await page.getByRole("listitem").count()).toBe(25);
  expect(errors).toEqual([]);
  await context.close();
});
