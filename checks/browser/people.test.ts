import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { Page, Route } from "playwright-core";
import { expect, test } from "vitest";
import { freshPage, phone, wide, wordsOn } from "./chromium.ts";
import { recordOf, weeksAhead } from "./record-story.ts";
import { faultsOf } from "./page-faults.ts";
import { storyServer } from "./story-server.ts";

const story = storyServer();

/** Opens a demo and its people; answers the practice's id. */
async function openPeople(page: Page, demo = "Open Marlsford, in pounds"): Promise<string> {
  await page.goto(story.server.address);
  await page.getByRole("button", { name: demo }).click();
  await page.getByRole("heading", { name: "Classes", level: 1 }).waitFor();
  await page.getByRole("navigation", { name: "Places" }).getByRole("link", { name: "People" }).click();
  await page.getByText(/^Nobody is written down yet|^Search for a name/).waitFor();
  return /practice\/([^/]+)/.exec(page.url())?.[1] ?? "";
}

/** The form for somebody new, which is closed once there is anybody. */
async function openNew(page: Page): Promise<void> {
  const box = page.getByRole("textbox", { name: "Name", exact: true });
  if (!(await box.isVisible())) await page.getByText("Write somebody new down").click();
}

async function writeDown(page: Page, name: string): Promise<string> {
  await openNew(page);
  await page.getByRole("textbox", { name: "Name", exact: true }).fill(name);
  await page.getByRole("button", { name: "Write this person down" }).click();
  await page.getByRole("heading", { name, level: 1 }).waitFor();
  return page.url().split("/").at(-1) ?? "";
}

test("Pause: a 10-pass at 85.00 with 4 used is paused and given back, and nothing tells why", async () => {
  const { context, page, errors } = await freshPage(story.browser, phone);
  const practice = await openPeople(page);
  await openNew(page);
  await page.getByRole("textbox", { name: "Name", exact: true }).fill(" ");
  await page.getByRole("textbox", { name: "Email" }).fill("tamsyn.example");
  await page.getByRole("button", { name: "Write this person down" }).click();
  await page.getByText("There is no name here. Write what this person is called.").waitFor();
  await page.getByText("“tamsyn.example” is not an address for email.").waitFor();
  await page.getByRole("textbox", { name: "Email" }).fill("tamsyn@marlsford.example");
  const person = await writeDown(page, "Tamsyn Quillfeather");
  await page.getByText("Never gave a place up too late.").waitFor();

  await page.getByText("Sell a pass or a block").click();
  const sale = page.getByRole("form", { name: "Sell a pass or a block" });
  await sale
    .getByRole("combobox", { name: "From your prices" })
    .selectOption({ label: "pass of 10 for £82.00, Tuesday evening, mixed" });
  await sale.getByRole("textbox", { name: "Price of all of it" }).fill("eighty");
  await sale.getByText("“eighty” is not an amount", { exact: false }).waitFor();
  await sale.getByRole("textbox", { name: "Price of all of it" }).fill("85");
  await sale.getByRole("textbox", { name: /a class taken counts/ }).fill("10.00");
  await sale.getByRole("rowheader", { name: /^Teaching date \d+ the last day of the pass/ }).waitFor();
  await sale.getByRole("button", { name: "Sell the pass of 10 for £85.00" }).click();
  await page.getByText(/^10 of 10 classes left, to use by /).waitFor();

  const record = await recordOf(story.server.address, practice);
  const pass = await record.passOf(person);
  const dates = weeksAhead(4);
  await record.openDates("tuesday-evening", dates);
  for (const date of dates) {
    const session = `story-tuesday-evening.${date}`;
    const people = [{ place: `pl-${date}`, person, how: "pass", pass }];
    await record.act({ kind: "take place", session, people });
    await record.act({ kind: "mark", session, place: `pl-${date}`, as: "attended" });
  }
  await page.reload();
  await page.getByText(/^6 of 10 classes left, to use by /).waitFor();

  await page.getByRole("button", { name: "A note about health: yes, agreed to these words" }).click();
  await page.getByRole("button", { name: "Fill in the health form together" }).click();
  const form = page.getByRole("form", { name: "Health form" });
  await form
    .getByRole("group", { name: /^Are you pregnant/ })
    .getByRole("radio", { name: "yes" })
    .check();
  await form.getByText("To talk about: pregnancy or a birth.").waitFor();
  const note = form.getByRole("textbox", { name: "A short note, to be kept" });
  await note.fill("x".repeat(401));
  await form.getByText("The note has 401 letters. Make it 400 or fewer.").waitFor();
  await note.fill("pregnant, week 12: no lying flat");
  await form.getByRole("checkbox", { name: "A dot on the register: speak to me" }).check();
  await form.getByRole("button", { name: "Keep the note and the dot" }).click();
  await page.getByRole("button", { name: "Show the note" }).click();
  await page.getByText("pregnant, week 12: no lying flat").waitFor();
  await page.getByRole("link", { name: "Everybody" }).click();
  await page.getByRole("searchbox").fill("tamsyn quill");
  await page.getByText("speak to me").waitFor();
  await page.getByRole("link", { name: "Tamsyn Quillfeather" }).first().click();
  await page.getByRole("button", { name: "Show the note" }).waitFor();
  expect(await page.getByText("week 12").count()).toBe(0);

  await page.getByText("Pause it", { exact: true }).click();
  await page.getByText("No reason is needed.").waitFor();
  await page.getByRole("button", { name: "Pause it from this day" }).click();
  await page.getByText(/^Paused from .* moves by the teaching dates in the pause\.$/).waitFor();
  await page.getByText("Give money back for what is left").click();
  // 85.00 × 6 ÷ 10 = 51.00, and 85.00 − 4 × 10.00 = 45.00
  await page.getByRole("table", { name: "By equal shares: 51.00 GBP" }).waitFor();
  await page.getByRole("table", { name: "By the written rule: 45.00 GBP" }).waitFor();
  await page.getByText("the written rule says another amount, £45.00.", { exact: false }).waitFor();
  await page.getByText(/may be unfair and not bind the holder/).waitFor();
  await page.getByRole("button", { name: "Give back £51.00" }).click();
  await page.getByText("Nothing is left of 10 classes: 4 used, 6 given back.").waitFor();

  await page.getByRole("link", { name: /^Read all that is kept about/ }).click();
  await page.getByText("Pass of 10: −£51.00 by cash", { exact: false }).waitFor();
  expect((await wordsOn(page)).toLowerCase()).not.toContain("pregnan");
  for (const told of [...(await record.everything(person)), storeText()])
    expect(told.toLowerCase()).not.toMatch(/pregnan|week 12/);
  await page.getByRole("checkbox", { name: "With the note about health, opened" }).check();
  await page.getByText("The note: pregnant, week 12: no lying flat").waitFor();
  expect(await wordsOn(page)).not.toMatch(/NaN|undefined|Infinity/);
  expect(errors).toEqual([]);
  await context.close();
});

test("each consent is asked by itself, dated, and taken back; who is erased is gone, also from the file", async () => {
  const { context, page, errors } = await freshPage(story.browser, wide);
  await openPeople(page);
  await writeDown(page, "Quillon Trevarrack");
  const photo = page.getByRole("region", { name: "Pictures" });
  await photo.getByText("Not asked yet: taken for no.").waitFor();
  await photo.getByRole("button", { name: "Pictures: yes, agreed to these words" }).click();
  await photo.getByText(/^Agreed on /).waitFor();
  await page.getByRole("region", { name: "News" }).getByText("Not asked yet: taken for no.").waitFor();
  await photo.getByRole("button", { name: "Pictures: take it back" }).click();
  await photo.getByText(/^No, since /).waitFor();
  expect(await page.getByRole("button", { name: /health form/ }).count()).toBe(0);

  await page.getByText("Put on the cover list").click();
  await page.getByRole("textbox", { name: "Usual fee" }).fill("35");
  await page.getByRole("button", { name: "Keep this" }).click();
  await page.getByText("No insurance was seen, so no session can be given yet.").waitFor();
  expect(storeText()).toContain("Trevarrack");

  await page.getByRole("button", { name: "Erase Quillon Trevarrack …" }).click();
  const dialog = page.getByRole("dialog");
  await dialog.getByText("This goes").waitFor();
  await dialog.getByRole("button", { name: "Keep everything" }).click();
  await page.getByRole("heading", { name: "Quillon Trevarrack", level: 1 }).waitFor();
  await page.getByRole("button", { name: "Erase Quillon Trevarrack …" }).click();
  await dialog.getByRole("button", { name: "Erase for good" }).click();
  await page.getByRole("heading", { name: "People", level: 1 }).waitFor();
  await expect.poll(() => page.getByText("Trevarrack").count()).toBe(0);
  expect(storeText()).not.toMatch(/Quillon|Trevarrack/);
  expect(errors).toEqual([]);
  await context.close();
});

test("with no signal it is said, what was typed stays, and sent again it is there once", async () => {
  const { context, page } = await freshPage(story.browser, phone);
  await openPeople(page);
  await writeDown(page, "Perran Oakley-Thirsk");
  await page.getByRole("link", { name: "Everybody" }).click();
  await openNew(page);
  await page.getByRole("textbox", { name: "Name", exact: true }).fill("Zenobia Thirsk");
  await context.setOffline(true);
  await page.getByRole("button", { name: "Write this person down" }).click();
  await page.getByText("There is no signal, or the server does not answer.").first().waitFor();
  await page.getByRole("link", { name: "Perran Oakley-Thirsk" }).click();
  await page.getByRole("link", { name: "Everybody" }).click();
  expect(await page.getByRole("textbox", { name: "Name", exact: true }).inputValue()).toBe("Zenobia Thirsk");
  await context.setOffline(false);
  await page.getByRole("button", { name: "Write this person down" }).click();
  await page.getByRole("heading", { name: "Zenobia Thirsk", level: 1 }).waitFor();
  await page.getByRole("link", { name: "Everybody" }).click();
  await page.getByRole("searchbox").fill("zenobia thirsk");
  await page.getByText(/^1 of \d+ people\.$/).waitFor();
  await page.getByRole("searchbox").fill("thirsk");
  await page.getByText(/^2 of \d+ people\.$/).waitFor();
  await page.getByRole("searchbox").fill("nobody of this name");
  await page.getByText(/^Nobody of \d+ people is called so\.$/).waitFor();
  await context.close();
});

test("an answer that was lost on the way writes nobody down twice", async () => {
  const { context, page } = await freshPage(story.browser, { ...wide, serviceWorkers: "block" });
  await openPeople(page);
  await openNew(page);
  await page.getByRole("textbox", { name: "Name", exact: true }).fill("Wilmot Varcoe-Lune");
  await page.route("**/record", lost, { times: 1 });
  await page.getByRole("button", { name: "Write this person down" }).click();
  await page.getByText("There is no signal, or the server does not answer.").waitFor();
  await page.getByRole("button", { name: "Write this person down" }).click();
  await page.getByRole("heading", { name: "Wilmot Varcoe-Lune", level: 1 }).waitFor();
  await page.getByRole("link", { name: "Everybody" }).click();
  await page.getByRole("searchbox").fill("varcoe");
  await page.getByText(/^1 of \d+ people\.$|^1 person\.$/).waitFor();
  await context.close();
});

test("a block holds its mats at once, full dates cannot be chosen, and dollars and dates are American", async () => {
  const { context, page, errors } = await freshPage(story.browser, { ...wide, colorScheme: "dark" });
  const practice = await openPeople(page, "Open Cedar Fork, in dollars");
  const record = await recordOf(story.server.address, practice);
  const offered = record.classes.find(({ document }) => document.prices.passes.length > 0)?.id ?? "";
  const dates = weeksAhead(3);
  await record.openDates(offered, dates, { capacity: 1, currency: "USD", zone: "America/Chicago" });
  await record.act({ kind: "meet person", person: "p-full", contact: { name: "Ines’ neighbor" } });
  const full = `story-${offered}.${dates[1]}`;
  const taken = [{ place: "pl-full", person: "p-full", how: "single" }];
  await record.act({ kind: "take place", session: full, people: taken });
  await page.reload();
  await writeDown(page, "Dale Whitcomb");
  await page.getByText("Sell a pass or a block").click();
  const sale = page.getByRole("form", { name: "Sell a pass or a block" });
  await sale.getByRole("combobox", { name: "What it is" }).selectOption("block");
  await sale.getByRole("combobox", { name: "Of which class" }).selectOption(offered);
  await sale.getByRole("checkbox", { name: /full$/ }).waitFor();
  expect(await sale.getByRole("checkbox", { name: /full$/ }).isDisabled()).toBe(true);
  for (const box of await sale.getByRole("checkbox", { name: /1 mat free/ }).all()) await box.check();
  await sale.getByText("2 dates are chosen. A mat on each is held at once.").waitFor();
  await sale.getByRole("textbox", { name: "Price of all of it" }).fill("24");
  await sale.getByRole("button", { name: "Sell the block of 2 for $24.00" }).click();
  await page.getByText("Spots ahead are held out of it:").waitFor();
  expect(await page.getByRole("button", { name: /^Give up the spot on \w+, \w+ \d+, \d{4}$/ }).count()).toBe(
    2,
  );
  await page
    .getByRole("button", { name: /^Give up the spot/ })
    .first()
    .click();
  await page.getByText(/^No spot is held yet on /).waitFor();
  await page.getByRole("button", { name: "Take these spots" }).click();
  await expect.poll(() => page.getByRole("button", { name: /^Give up the spot/ }).count()).toBe(2);
  expect(await wordsOn(page)).not.toMatch(/NaN|undefined|Infinity|£/);
  expect(errors).toEqual([]);
  await context.close();
});

for (const [name, options] of [
  ["a phone in the light", { ...phone, colorScheme: "light" }],
  ["a phone in the dark", { ...phone, colorScheme: "dark" }],
  ["a wide screen in the light", { ...wide, colorScheme: "light" }],
  ["a wide screen in the dark", { ...wide, colorScheme: "dark" }],
] as const) {
  test(`people, one of them with everything open, and all that is kept pass axe on ${name}`, async () => {
    const { context, page, errors } = await freshPage(story.browser, options);
    const practice = await openPeople(page);
    const record = await recordOf(story.server.address, practice);
    await record.aPersonWithPass("p-axe", "tuesday-evening");
    await page.reload();
    await page.getByRole("heading", { name: "Passes that run out soon" }).waitFor();
    await page.getByRole("link", { name: "Perran Oakley-Thirsk" }).first().waitFor();
    expect(await faultsOf(page)).toEqual([]);
    await page.getByRole("link", { name: "Perran Oakley-Thirsk" }).first().click();
    await page.getByText(/classes left, to use by/).waitFor();
    for (const line of await page.getByRole("main").locator("details > summary").all()) await line.click();
    await page.getByRole("button", { name: "Fill the form in anew" }).click();
    await page.getByRole("button", { name: "Show the note" }).click();
    await page.getByText("left knee").waitFor();
    expect(await faultsOf(page)).toEqual([]);
    await page.getByRole("link", { name: /^Read all that is kept about/ }).click();
    await page.getByRole("heading", { name: "Payments" }).waitFor();
    expect(await faultsOf(page)).toEqual([]);
    expect(errors).toEqual([]);
    await context.close();
  });
}

/** The server does what it was asked, and its answer is lost on the way. */
async function lost(route: Route): Promise<void> {
  const answer = await route.fetch();
  expect(answer.status()).toBe(200);
  await route.abort();
}

/** The bytes of the data file and of its log, as the server leaves them. */
function storeText(): string {
  const file = join(story.server.data, "hallful.sqlite");
  return [file, `${file}-wal`].map((it) => (existsSync(it) ? readFileSync(it, "latin1") : "")).join("");
}
