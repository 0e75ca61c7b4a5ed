import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { freshPage, phone, wide, wordsOn } from "./chromium.ts";
import { faultsOf } from "./page-faults.ts";
import { storyServer } from "./story-server.ts";
import { booked, type ClassAhead, classAhead } from "./wrong-story.ts";

const story = storyServer();

const PASSES = [
  "Ana One",
  "Ben Two",
  "Cleo Three",
  "Dov Four",
  "Eli Five",
  "Fay Six",
  "Gil Seven",
  "Hana Eight",
  "Ivo Nine",
];
const BLOCKS = ["Jun Ten", "Kit Eleven", "Lena Twelve"];
const SINGLES = ["Mo Thirteen", "Nell Fourteen"];

test("polling day: one screen lists what follows for all fourteen, does it, and has the messages ready", async () => {
  const ahead = await fourteenBooked("polling");
  const { context, page, errors } = await freshPage(story.browser, phone);
  await openWrong(page, ahead);
  await page.getByText("The hall is shut").tap();
  const follows = page.locator("[data-follows]");
  await follows
    .getByText("9 on a pass: nothing is taken off, and the use-by moves by one teaching date.")
    .waitFor();
  await follows.getByText("3 on a block: offered another date or £9.00 each.").waitFor();
  await follows.getByText("2 paid for this date: £20.00 goes back.").waitFor();
  await follows.getByText(/^The hall said on .*The hire of £27\.00 is not payable\./).waitFor();
  await follows.getByText("The date goes into the closed dates of the class").waitFor();
  expect(await faultsOf(page)).toEqual([]);
  await page.getByRole("button", { name: "Cancel this session, and do all of this" }).tap();
  await page.getByText("Tell people now; nothing is sent by itself.").waitFor();
  await page.getByText("All kept.").waitFor({ state: "attached" });

  for (const person of PASSES) {
    const pass = await ahead.state(`pass/pass-${idOf(person)}`);
    expect(pass).toMatchObject({ left: 10, used: [], promised: [], useBy: ahead.dates[6] });
  }
  const books = await ahead.books();
  // nine passes at 85.00 and three blocks at 54.00 by bank; two singles came and went in cash; no hire
  expect([books["bank"], books["cash"], books["due:hall:quay-street-mission-room"]]).toEqual([
    92_700,
    0,
    undefined,
  ]);
  // the class sheet is saved a moment later, as after typing
  await expect
    .poll(async () => (await ahead.classDocument()).year.closures.map(({ from }) => from))
    .toEqual([ahead.dates[0]]);

  // the messages are still there after the page was closed
  await page.reload();
  await page.getByText("The hall is shut").tap();
  await page.getByText("14 messages, one for each of them").click();
  await page
    .getByText(/have £9\.00 back\. Tell me which you prefer\./)
    .first()
    .waitFor();
  await page.getByText("A notice for the door").click();
  const words = await wordsOn(page);
  expect(words).toContain("no class on");

  // Jun prefers another date: the seventh instead of the first, with a place in it
  await page.goto(`${story.server.address}/practice/${ahead.practice}/people/jun-ten`);
  await page.getByText("Take one of its sessions on another date").click();
  const [first = "", seventh = ""] = [ahead.dates[0], ahead.dates[6]].map(
    (date) => `thursday-beginners.${date}`,
  );
  await page.getByRole("combobox", { name: "Instead of" }).selectOption(first);
  await page.getByRole("combobox", { name: "On", exact: true }).selectOption(seventh);
  await page.getByRole("button", { name: "Take it on the other date" }).tap();
  await page.getByText("Swapped.", { exact: false }).first().waitFor();
  await expect
    .poll(async () => (await ahead.state("pass/block-jun-ten"))["promised"])
    .toEqual([{ session: seventh, class: "thursday-beginners", on: ahead.dates[6] }]);
  expect(await faultsOf(page)).toEqual([]);
  expect(errors).toEqual([]);
  await context.close();
});

test("a lost voice: covering is weighed, an uninsured name is refused, and the handover sheet tells of nobody’s health", async () => {
  const ahead = await classAhead(story.server.address, "lost-voice", 1);
  const names = [...PASSES, ...BLOCKS, "Mo Thirteen"];
  await booked(ahead, names, () => Promise.resolve({ how: "single" }));
  await healthOf(ahead, "ana-one");
  await coverTeacher(ahead, "Maren Oxley", "2099-01-01", 3500);
  await coverTeacher(ahead, "Tobin Reyes", null, 3000);
  const { context, page, errors } = await freshPage(story.browser, wide);
  await openWrong(page, ahead);
  await page.getByText("I cannot teach").click();
  await page.getByRole("textbox", { name: "Expected of the 13 booked" }).fill("11");
  await page.getByRole("textbox", { name: "Fee of the cover teacher" }).fill("35.00");
  // 11 × 7.70 − 27.00 − 35.00 = 22.70 against − 27.00
  await page.getByText("Having it covered leaves £22.70; cancelling leaves −£27.00.").waitFor();
  const list = page.locator("[data-cover-list]");
  await list.getByText("No insurance certificate of Tobin Reyes was seen.").waitFor();
  expect(await list.getByRole("button", { name: /^Tobin Reyes takes it/ }).isDisabled()).toBe(true);
  const maren = list.getByRole("button", { name: "Maren Oxley takes it for £35.00" });
  expect(await maren.isDisabled()).toBe(true);
  await page.getByText("The hall agrees that somebody else teaches").click();
  expect(await faultsOf(page)).toEqual([]);
  await maren.click();
  await page.getByText("Maren Oxley takes it", { exact: true }).waitFor();
  await page.getByRole("link", { name: "Print the handover sheet" }).click();
  await page.getByRole("heading", { name: "Handover sheet" }).waitFor();
  await page.getByText("Booked: 13").waitFor();
  const sheet = await wordsOn(page);
  expect(sheet).toContain("Maren Oxley, for £35.00 in place of Oriel Tamsett");
  expect(sheet).toMatch(/ at \d\d:\d\d, \d+ minutes/);
  expect(sheet).toContain("Ana One • speak first");
  expect(sheet).not.toContain("knee");
  expect(await ahead.everything()).not.toContain("knee");
  expect((await ahead.books())["due:cover:maren-oxley"]).toBe(-3500);
  expect(await faultsOf(page)).toEqual([]);
  expect(errors).toEqual([]);
  await context.close();
});

test("somebody hurt is written down once, locked, and added to in the accident book", async () => {
  const ahead = await classAhead(story.server.address, "accident", 1);
  const { context, page, errors } = await freshPage(story.browser, phone);
  await openWrong(page, ahead);
  await page.getByText("Somebody was hurt").tap();
  const lock = page.getByRole("button", { name: "Write it down and lock it" });
  expect(await lock.isDisabled()).toBe(true);
  await page.getByRole("textbox", { name: "Who was hurt" }).fill("Ana One");
  await page.getByRole("textbox", { name: "What happened" }).fill("Slipped on a wet board by the door.");
  expect(await faultsOf(page)).toEqual([]);
  await page.getByLabel("Day on which it happened").fill("2199-01-01");
  await page.getByText("That is still to come. Write when it happened.").waitFor();
  expect(await lock.isDisabled()).toBe(true);
  await page.getByLabel("Day on which it happened").fill("2026-01-09");
  await page.getByLabel("About what time").fill("18:50");
  // a second tap finds an empty form
  await lock.dblclick();
  await page.getByText("Written down and locked.").waitFor();
  await page.getByText("All kept.").waitFor({ state: "attached" });
  await page.getByRole("link", { name: "The accident book" }).tap();
  await page.getByText("Slipped on a wet board by the door.").waitFor();
  await page.getByRole("heading", { name: "Friday 9 January 2026 at 18:50" }).waitFor();
  expect(await page.getByRole("region", { name: /^Accident of/ }).count()).toBe(1);
  await page.getByRole("textbox", { name: "Add to it" }).fill("The hall was told.");
  await page.getByRole("button", { name: "Add this" }).tap();
  await page.locator("dd", { hasText: "The hall was told." }).waitFor();
  expect(await faultsOf(page)).toEqual([]);
  expect(errors).toEqual([]);
  await context.close();
});

async function fourteenBooked(practice: string): Promise<ClassAhead> {
  const ahead = await classAhead(story.server.address, practice, 12);
  // use by the sixth of the dates: one teaching date later is the seventh
  const common = {
    kind: "sell pass",
    on: ahead.dates[0],
    currency: "GBP",
    paid: "bank",
    useBy: ahead.dates[5],
  };
  await booked(ahead, PASSES, async (person) => {
    const terms = { perClassOnRefund: 1000, transferable: false, pauses: null };
    const pass = { pass: `pass-${person}`, form: "pass", holder: person, name: "Ten", size: 10, price: 8500 };
    await ahead.act({ ...common, ...pass, valid: "all", terms });
    return { how: "pass", pass: pass.pass };
  });
  await booked(ahead, BLOCKS, async (person) => {
    const sessions = ahead.dates.slice(0, 6).map((date) => `thursday-beginners.${date}`);
    const terms = { perClassOnRefund: null, transferable: false, pauses: 0 };
    const block = {
      pass: `block-${person}`,
      form: "block",
      holder: person,
      name: "Six",
      size: 6,
      price: 5400,
    };
    await ahead.act({ ...common, ...block, valid: ["thursday-beginners"], sessions, terms });
    return { how: "block", pass: block.pass };
  });
  await booked(ahead, SINGLES, () => Promise.resolve({ how: "single", paid: { amount: 1000, by: "cash" } }));
  return ahead;
}

async function healthOf({ act }: ClassAhead, person: string): Promise<void> {
  await act({ kind: "consent", person, to: "health", given: true, wording: "a short note about my health" });
  await act({ kind: "health form", person, speak: true, reviewBy: "2099-01-01", note: "left knee" });
}

async function coverTeacher({ act }: ClassAhead, name: string, insuredUntil: string | null, fee: number) {
  const person = idOf(name);
  await act({ kind: "meet person", person, contact: { name } });
  await act({ kind: "may cover", person, insuredUntil, styles: "gentle", fee });
}

async function openWrong(page: Page, { practice, session }: ClassAhead): Promise<void> {
  await page.goto(`${story.server.address}/practice/${practice}/sessions/${session}/wrong`);
  await page.getByRole("heading", { name: "Something is wrong" }).waitFor();
  await page.getByText("What is wrong?").waitFor();
}

function idOf(name: string): string {
  return name.toLowerCase().replaceAll(" ", "-");
}
