import type { BrowserContextOptions, Page } from "playwright-core";
import { Temporal } from "temporal-polyfill";
import { expect, test } from "vitest";
import { freshPage, phone, wide, wordsOn } from "./chromium.ts";
import { faultsOf } from "./page-faults.ts";
import { storyServer } from "./story-server.ts";
import { bookings, type Evening, eveningOn, names, openDates } from "./tonight-story.ts";

const story = storyServer();

test("marked, walked in and paid in cash with no signal, closed, opened again and undone: all there once when the signal is back", async () => {
  const evening = await eveningOn(story.server.address, "offline");
  const { context, page, errors } = await freshPage(story.browser, phone);
  await openDates(page, story.server.address, evening, 5);
  await bookings(evening, names.slice(0, 3));
  await onTonight(page, evening);
  await readyForNoSignal(page);

  await context.setOffline(true);
  await mark(page, "Ana Brook is here");
  await mark(page, "Ben Hale is here");
  await mark(page, "Cora Finch is here");
  await page.getByText("3 marks wait for signal.").waitFor();
  await walkIn(page, "Wilf Dane");
  await page.getByText("4 entries wait for signal.").waitFor();
  expect((await evening.kept()).places.map(({ state }) => state)).toEqual(["held", "held", "held"]);

  // the page is closed and opened again without signal
  const address = page.url();
  await page.close();
  const again = await context.newPage();
  await again.goto(address);
  await again.getByText("4 entries wait for signal.").waitFor();
  await again.getByText("4 here.").waitFor();
  await again.getByRole("button", { name: "Undo Cora Finch" }).tap();
  await again.getByText("3 here, 1 not marked yet.").waitFor();

  await context.setOffline(false);
  await again.getByText("All kept.").waitFor();
  const kept = await evening.kept();
  expect(kept.places.map(({ person, state }) => [person.slice(0, 2), state])).toEqual([
    ["p-", "attended"],
    ["p-", "attended"],
    ["p-", "held"],
    [kept.places[3]?.person.slice(0, 2), "attended"],
  ]);
  const books = await evening.books();
  // the walk-in's 9.50 in cash; Ana's 9.50 by bank; a tenth of the pass of 82.00 is earned; nothing twice
  expect(books).toMatchObject({
    cash: 950,
    bank: 950,
    card: 8200,
    "earned:single": -1900,
    "earned:pass": -820,
  });
  expect(Object.values(books).reduce((sum, amount) => sum + amount, 0)).toBe(0);
  expect(errors.filter((it) => !it.includes("ERR_INTERNET_DISCONNECTED"))).toEqual([]);
  await context.close();
});

test("the last mat is sold elsewhere meanwhile: the walk-in is kept, told in words, and a refused mark is not dropped", async () => {
  const evening = await eveningOn(story.server.address, "conflict");
  const { context, page } = await freshPage(story.browser, phone);
  await openDates(page, story.server.address, evening, 3);
  await bookings(evening, names.slice(0, 2));
  await onTonight(page, evening);
  await readyForNoSignal(page);
  await context.setOffline(true);
  await walkIn(page, "Wilf Dane");
  await mark(page, "Ben Hale is here");
  await page.getByText("2 entries wait for signal.").waitFor();

  // elsewhere the third mat goes to Zoe, and Ben gives his place up
  await evening.act({ kind: "meet person", person: "zoe", contact: { name: "Zoe Quay" } });
  await evening.act({
    kind: "take place",
    session: evening.session,
    people: [{ place: "pl-z", person: "zoe", how: "single" }],
  });
  await evening.act({ kind: "give up place", session: evening.session, place: "pl-1" });
  await evening.act({ kind: "walk in", session: evening.session, place: "pl-y", person: "yan", ...yan });
  await context.setOffline(false);

  const otherwise = page.getByRole("region", { name: "Kept, but otherwise than you saw" });
  await otherwise.getByText(/All 3 mats were taken by the time this was told/).waitFor();
  await page.getByText(/Wilf Dane was let in when no mat was left, and paid £9\.50 by cash/).waitFor();
  const settle = page.getByRole("region", { name: "Not kept yet: settle these" });
  await settle.getByText("Ben Hale: here").waitFor();
  await settle.getByText("This place was given up before.").waitFor();
  // neither goes by itself
  await page.reload();
  await settle.getByRole("button", { name: "Try again" }).tap();
  await settle.getByText("This place was given up before.").waitFor();
  await settle.getByRole("button", { name: "Settled: put it aside" }).tap();
  await otherwise.getByRole("button", { name: "I have read it" }).tap();
  await page.getByText("All kept.").waitFor();
  expect((await evening.kept()).cameOver).toMatchObject([{ paid: { amount: 950, by: "cash" } }]);
  await context.close();
});

test("a place ahead for somebody new, a second who waits, a place given up late, money, heads, and the register closed", async () => {
  const evening = await eveningOn(story.server.address, "ahead");
  const { context, page, errors } = await freshPage(story.browser, wide);
  await openDates(page, story.server.address, evening, 2);
  await page.goto(`${story.server.address}/practice/${evening.practice}`);
  await page.getByRole("heading", { name: "Tonight", level: 1 }).waitFor();
  const answer = page.locator(".answer").first();
  await answer.getByText(/0 of 2 mats taken\.$/).waitFor();
  for (const name of ["Ana Brook", "Ben Hale", "Cora Finch"]) await bookAhead(page, name);
  await answer.getByText(/2 of 2 mats taken, 1 waits, 2 have not paid\./).waitFor();

  await page.getByRole("button", { name: "Ana Brook: pay, and more" }).click();
  await page
    .getByText(
      /so it was late by .* Nothing is charged this time, as it is the first time that it was late\./,
    )
    .waitFor();
  await page.getByRole("button", { name: "Give the place up" }).click();
  await page.getByText(/Given up: Ana Brook \(late, let go\)/).waitFor();
  const waiting = page.getByRole("region", { name: "The waiting list" });
  await waiting.getByText(/may have a mat; the first to reply has it/).waitFor();
  await waiting.getByRole("button", { name: "Takes the place" }).click();
  await page.getByRole("button", { name: "Keep the place" }).click();

  await page.getByRole("button", { name: "Ben Hale: pay, and more" }).click();
  await page.getByRole("button", { name: "Cash £9.50" }).click();
  await page.getByText(/For this class £9\.50: cash £9\.50/).waitFor();
  await page.getByRole("textbox", { name: "In the box before" }).fill("20");
  await page.getByRole("textbox", { name: "Counted now" }).fill("29.00");
  await page
    .getByText(
      "The box holds £0.50 less than it should: float £20.00 + taken £9.50 − paid out £0.00 = £29.50.",
    )
    .waitFor();

  await page.getByRole("button", { name: "Ben Hale is here" }).click();
  await page.getByRole("button", { name: "Heads", exact: true }).click();
  await page.getByText("should be here, you among them").waitFor();
  await page.getByRole("button", { name: "Keep: 2 counted" }).click();
  await page.getByRole("button", { name: "Close the register" }).click();
  await page.getByText(/charged as if they had: Cora Finch\./).waitFor();
  await page.getByRole("dialog").getByRole("button", { name: "Close the register" }).click();
  await page.getByText("All kept.").waitFor();
  expect(await evening.kept()).toMatchObject({ heads: 2, closed: true, waiting: [] });
  expect(errors).toEqual([]);
  await context.close();
});

test("a signal too weak for any answer is not waited for: the register opens from the phone and marks wait", async () => {
  const evening = await eveningOn(story.server.address, "weak");
  const { context, page } = await freshPage(story.browser, phone);
  await openDates(page, story.server.address, evening, 3);
  await bookings(evening, names.slice(0, 2));
  await onTonight(page, evening);
  await readyForNoSignal(page);
  // asked, and never answered
  await context.route("**/api/**", () => undefined);
  await page.reload();
  await page.getByRole("heading", { name: "Register" }).waitFor({ timeout: 15_000 });
  await mark(page, "Ana Brook is here");
  await page.getByText("1 mark waits for signal.").waitFor({ timeout: 30_000 });
  await context.unroute("**/api/**");
  // it tries again by itself
  await page.getByText("All kept.").waitFor();
  expect((await evening.kept()).places.map(({ state }) => state)).toEqual(["attended", "held"]);
  await context.close();
});

test("two together both wait when one mat is left; a date two months away has a register too; the day's books are shown", async () => {
  const evening = await eveningOn(story.server.address, "together");
  const { context, page, errors } = await freshPage(story.browser, wide);
  await openDates(page, story.server.address, evening, 2);
  await bookings(evening, names.slice(0, 1));
  await onTonight(page, evening);
  await page.getByRole("button", { name: "Add a place" }).click();
  const dialog = page.getByRole("dialog");
  await dialog.getByRole("checkbox", { name: "Two come together" }).check();
  // Ana is known and has a place already: that is said, and nothing is lost of what was typed
  await dialog.getByRole("textbox", { name: "Name", exact: true }).fill("ana");
  await dialog.getByRole("button", { name: "Ana Brook" }).click();
  await dialog.getByRole("textbox", { name: "And" }).fill("Uma Reeve");
  await dialog.getByRole("button", { name: "Keep the place" }).click();
  await dialog.getByText("This person has a place in this session already.").waitFor();
  await dialog.getByRole("textbox", { name: "Name", exact: true }).fill("Tova Wren");
  await dialog.getByRole("button", { name: "Keep the place" }).click();
  await page
    .locator(".answer")
    .first()
    .getByText(/1 of 2 mats taken, 2 wait\./)
    .waitFor();
  await page.getByText("All kept.").waitFor();
  const [tova, uma] = (await evening.kept()).waiting;
  expect([tova?.with, uma?.with]).toEqual([uma?.entry, tova?.entry]);
  await page
    .getByText(/in the books, passes sold among it: £9\.50, that is cash £0\.00, card £0\.00, bank £9\.50/)
    .waitFor();

  const date = Temporal.PlainDate.from(evening.session.slice(-10)).add({ weeks: 8 }).toString();
  const far = `${story.server.address}/practice/${evening.practice}/sessions/tuesday-evening.${date}`;
  await page.goto(far);
  await page
    .getByText(/0 of 2 mats taken\.$/)
    .first()
    .waitFor();
  await bookAhead(page, "Vera Lane");
  await page
    .getByText(/1 of 2 mats taken, 1 has not paid\.$/)
    .first()
    .waitFor();
  await page.getByRole("link", { name: "Something is wrong tonight" }).waitFor();
  expect(errors).toEqual([]);
  await context.close();
});

const looks: readonly (readonly [string, BrowserContextOptions])[] = [
  ["a phone in the light", { ...phone, colorScheme: "light" }],
  ["a phone in the dark", { ...phone, colorScheme: "dark" }],
  ["a wide screen in the light", { ...wide, colorScheme: "light" }],
  ["a wide screen in the dark", { ...wide, colorScheme: "dark" }],
];

test.each(looks)("the register and all that opens over it pass axe on %s", async (look, options) => {
  const evening = await eveningOn(story.server.address, `look-${looks.findIndex(([it]) => it === look)}`);
  const { context, page, errors } = await freshPage(story.browser, options);
  await page.goto(`${story.server.address}/practice/${evening.practice}/tonight`);
  await page.getByText("No session of the next fourteen days is in the record.").waitFor();
  expect(await faultsOf(page), "nothing in the record").toEqual([]);
  await openDates(page, story.server.address, evening, 4);
  await bookings(evening, names.slice(0, 6));
  await evening.act({ kind: "consent", person: "p-0", to: "health", given: true, wording: "a note" });
  const form = { kind: "health form", person: "p-0", speak: true, reviewBy: "2099-01-01", note: "left knee" };
  await evening.act(form);
  await onTonight(page, evening);
  await page.getByText("speak to me").waitFor();
  expect(await faultsOf(page), "register").toEqual([]);
  for (const name of ["Walk-in", "Heads", "Add a place", "Close the register", "Cora Finch: pay, and more"]) {
    await page.getByRole("button", { name, exact: true }).click();
    await page.getByRole("dialog").waitFor();
    expect(await faultsOf(page), name).toEqual([]);
    await page.getByRole("button", { name: "Back" }).click();
  }
  expect(await wordsOn(page)).not.toMatch(/knee|health/i);
  await page.emulateMedia({ media: "print" });
  expect(await wordsOn(page)).not.toMatch(/knee|health|speak/i);
  expect(errors).toEqual([]);
  await context.close();
});

test("on a phone the buttons of the register lie in the lower two thirds and are 56 px or more", async () => {
  const evening = await eveningOn(story.server.address, "reach");
  const { context, page } = await freshPage(story.browser, phone);
  await openDates(page, story.server.address, evening, 20);
  await bookings(evening, names);
  await onTonight(page, evening);
  const reach = ["Undo", "Walk-in", "Heads"].map((name) => page.getByRole("button", { name, exact: true }));
  for (const button of [...reach, page.getByRole("button", { name: "Ana Brook is here" })]) {
    const box = await button.boundingBox();
    expect(box?.height).toBeGreaterThanOrEqual(56);
    expect(box?.y).toBeGreaterThanOrEqual(844 / 3);
    expect((box?.y ?? 0) + (box?.height ?? 0)).toBeLessThanOrEqual(844);
  }
  const small = await page.locator(".reg-row > button").evaluateAll((all) =>
    all
      .map((it) => it.getBoundingClientRect())
      .filter(({ width, height }) => width < 56 || height < 56)
      .map(({ width, height }) => `${width} × ${height}`),
  );
  expect(small).toEqual([]);
  await context.close();
});

const yan = { contact: { name: "Yan Cole" }, how: "free" };

async function onTonight(page: Page, { practice }: Evening): Promise<void> {
  await page.goto(`${story.server.address}/practice/${practice}/tonight`);
  await page.getByText("All kept.").waitFor();
  await page.getByRole("heading", { name: "Register" }).waitFor();
}

/** The shell is on the device and answers for this page. */
async function readyForNoSignal(page: Page): Promise<void> {
  await page.evaluate(async () => navigator.serviceWorker.ready);
  await page.reload();
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  await page.getByText("All kept.").waitFor();
}

async function mark(page: Page, name: string): Promise<void> {
  const button = page.getByRole("button", { name });
  await button.tap();
  await page.waitForFunction(
    (label) => document.querySelector(`[aria-label="${label}"]`)?.getAttribute("aria-pressed") === "true",
    name,
  );
}

async function walkIn(page: Page, name: string): Promise<void> {
  await page.getByRole("button", { name: "Walk-in" }).tap();
  await page.getByRole("textbox", { name: "Name", exact: true }).fill(name);
  await page.getByRole("radio", { name: "Cash" }).check();
  await page.getByRole("button", { name: "On a mat" }).tap();
  await page.getByRole("button", { name: `${name} is here` }).waitFor();
}

async function bookAhead(page: Page, name: string): Promise<void> {
  await page.getByRole("button", { name: "Add a place" }).click();
  const dialog = page.getByRole("dialog");
  await dialog.getByRole("textbox", { name: "Name", exact: true }).fill(name);
  await dialog.getByRole("button", { name: /^(Keep the place|On the waiting list)$/ }).click();
  await dialog.waitFor({ state: "detached" });
}
