import type { Locator, Page } from "playwright-core";
import { beforeEach, afterEach, expect, test } from "vitest";
import { freshPage, wide } from "./chromium.ts";
import { storyServer } from "./story-server.ts";

const story = storyServer();
let page: Page;
let errors: string[];

// Each story starts in Tithe Barn Hall of a fresh demo, which takes 30 mats in straight lines.
beforeEach(async () => {
  ({ page, errors } = await freshPage(story.browser, wide));
  await page.goto(story.server.address);
  await page.getByRole("button", { name: "Open Marlsford, in pounds" }).click();
  await page.getByRole("link", { name: "Halls" }).click();
  await page.getByRole("link", { name: /Tithe Barn Hall/ }).click();
  await answers("30 mats fit");
});

afterEach(async () => {
  // a page that its own policy kept from loading the solver would tell it here
  expect(errors).toEqual([]);
  await page.context().close();
});

const answer = () => page.getByRole("region", { name: "The floor", exact: true }).locator(".answer");

async function answers(words: string | RegExp): Promise<void> {
  await answer().getByText(words).waitFor();
}

/** A question opened by its line; its whole as a place to look in. */
async function opened(title: string): Promise<Locator> {
  const question = page.getByRole("group").filter({ has: page.getByRole("heading", { name: title }) });
  await question.getByRole("heading", { name: title }).click();
  return question;
}

test("what would gain a mat is tried in one click, taken back in one, kept in one, and undone", async () => {
  const gains = await opened("What would gain a mat");
  await gains
    .getByText(/^5 cm less between long sides \(0\.45 m\) gains 4 mats, the most of \d changes\.$/)
    .first()
    .waitFor();
  await gains.getByRole("button", { name: /^Try: 5 cm less between long sides/ }).click();
  const trial = gains.getByRole("figure");
  await trial.getByText("Only a trial.").waitFor();
  await trial.getByRole("img", { name: /34 mats$/ }).waitFor();
  // nothing of it is kept by looking
  await answers("30 mats fit");
  await trial.getByRole("button", { name: "Take it back" }).click();
  await trial.waitFor({ state: "detached" });
  await gains.getByRole("button", { name: /^Try: 5 cm less between long sides/ }).click();
  await trial.getByRole("button", { name: "Keep this change" }).click();
  await answers("34 mats fit");
  await gains.getByText(/^Kept: 5 cm less between long sides/).waitFor();
  await page.getByRole("button", { name: "Undo" }).click();
  await answers("30 mats fit");
});

test("how many the room may hold: the posted number first, then each table with where it comes from", async () => {
  const room = await opened("How many the room may hold");
  await room.getByText("The hall’s own limit is 60 people").waitFor();
  const rows = room.getByRole("row", { name: /exercise room International|exercise room/ });
  // 8.20 × 13.40 m are 109.88 m²; at 4.65 m² each 23 people
  expect(await rows.first().innerText()).toMatch(
    /International Building Code \(United States\), 2021[\s\S]*23$/,
  );
  const exits = room.getByRole("table", { name: "As a guide by the width of the exits" });
  expect(await exits.innerText()).toContain(
    "Approved Document B, volume 2 (England), 2019, tables 2.2 and 2.3",
  );
  await room.getByText(/These figures are a guide and never override the hall’s posted number/).waitFor();
  // who decides is said once on the page while this is shut, at the answer
  await room.getByRole("heading").click();
  expect(
    await page
      .getByText(/fire risk assessment/)
      .filter({ visible: true })
      .count(),
  ).toBe(2);
});

test("who does not see the teacher is named, and crossed on the plan", async () => {
  const sight = await opened("Who sees the teacher");
  await sight.getByText("13 of 30 mats see the teacher past the people before them.").waitFor();
  await sight.getByText(/^Behind somebody: mats .* of line 2/).waitFor();
  await sight.getByRole("img", { name: /30 mats; 17 that do not see the teacher are crossed/ }).waitFor();
  // two strokes for each of the 17
  const strokes = (await sight.locator("svg .mat-cross").first().getAttribute("d")) ?? "";
  expect(strokes.match(/M/g)).toHaveLength(34);
  const count = sight.getByRole("textbox", { name: "The best sight there is for so many mats" });
  await count.fill("two dozen");
  await sight.getByText(/is not a number/).waitFor();
  await count.fill("24");
  await sight.getByRole("button", { name: "Look for it" }).click();
  await sight
    .getByText(/^From \d+ of 24 mats the teacher is not seen, .* tried, which does not prove/)
    .waitFor();
  await sight.getByRole("img", { name: /24 mats; \d+ that do not see the teacher are crossed/ }).waitFor();
});

test("a way to a door is looked for as wide as is set, drawn, and what blocks it is named", async () => {
  const ways = await opened("The ways to the doors");
  await ways.getByText("28 of 30 mats have no way 0.90 m wide to a door.").waitFor();
  await ways.getByText(/^In the way: mat/).waitFor();
  const widest = await ways.getByText(/^The widest way that every mat has in this plan is/).innerText();
  const width = ways.getByRole("textbox", { name: "How wide the ways are to be" });
  await width.fill("9");
  await width.press("Enter");
  await ways.getByText("Ask for a way from 0.30 m to 5.00 m wide.").waitFor();
  // what is called the widest that all of them have is one that all of them have
  const metres = /(0\.\d+) m\.$/.exec(widest)?.[1] ?? "";
  await width.fill(metres);
  await width.press("Enter");
  await ways.getByText(`Every mat has a way ${metres} m wide to a door.`).first().waitFor();
  const drawn = (await ways.locator(".way-line").first().getAttribute("d")) ?? "";
  expect(drawn.match(/M/g)).toHaveLength(30);
});

test("a place for a wheelchair is found, kept with its way, still there after a reload, and removed", async () => {
  const places = await opened("Places for wheelchairs and chairs");
  await places.getByRole("button", { name: "Find a place" }).click();
  await places.getByText(/with a way 0\.90 m wide to a door: 28 mats fit beside it, 2 fewer/).waitFor();
  await places.getByRole("button", { name: "Keep this change" }).click();
  // two people of the 60 are not on mats now
  await answers(
    "28 mats fit; the hall’s own limit is 60, which leaves 58 beside you and 1 other; so 28 can come",
  );
  await page.getByText(/^Saved \d/).waitFor();
  await page.reload();
  await answers("28 mats fit");
  const again = await opened("Places for wheelchairs and chairs");
  await again.getByRole("button", { name: "Remove Place 1 for a wheelchair or a chair" }).click();
  await answers("30 mats fit; the hall’s own limit is 60, which leaves 59 beside you; so 30 can come");
});

test("five ways to lay the mats stand side by side; the one chosen reaches the class that uses the hall", async () => {
  const ways = await opened("How the mats lie");
  const table = ways.getByRole("table", { name: "Ways to lay the mats on this floor" });
  await table.getByRole("row", { name: /Along the walls or across them/ }).waitFor();
  expect(await table.getByRole("row").count()).toBe(6);
  await table.getByRole("button", { name: "In staggered lines: lay them so" }).click();
  await answers("29 mats fit");
  await page
    .getByText("29 is the most there can be in staggered lines with this mat and these gaps.")
    .waitFor();
  await page.getByText(/^Saved \d/).waitFor();
  await page.getByRole("link", { name: "Classes" }).click();
  await page.getByRole("link", { name: /Tuesday evening/ }).click();
  const mats = page.getByRole("region", { name: "The mats" });
  await mats
    .getByText(/^29 mats fit/)
    .first()
    .waitFor();
  await mats
    .getByRole("combobox", { name: "How the mats lie" })
    .selectOption({ label: "in two banks that face a clear middle" });
  await mats
    .getByText(/^24 mats fit/)
    .first()
    .waitFor();
});

test("the search for the most has a plan at once, is stopped with the best it has, and goes on", async () => {
  const ways = await opened("How the mats lie");
  await ways.getByRole("button", { name: "Along the walls or across them: lay them so" }).click();
  await answers(/^3[0-9] mats fit, perhaps up to \d+/);
  await page.getByText(/^Looking for/).waitFor();
  await answers(/^32 mats fit/);
  await page.getByRole("button", { name: "Stop looking" }).click();
  await page.getByText("The search was stopped and keeps its best plan.").waitFor();
  await answers(/^32 mats fit/);
  await page.getByRole("button", { name: "Go on looking" }).click();
  await page.getByText(/^Looking for/).waitFor();
  await page
    .getByText(/^Mats? 1.* lies? /)
    .first()
    .waitFor();
});

test("with no signal the search for the most still has its solver, from what the device keeps", async () => {
  await page.evaluate(async () => navigator.serviceWorker.ready);
  await page.reload();
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  await page.waitForFunction(async () => {
    const kept = await Promise.all(
      (await caches.keys()).map(async (name) => (await caches.open(name)).keys()),
    );
    return kept.flat().some((it) => it.url.includes(".wasm"));
  });
  const fetched: string[] = [];
  page.context().on("requestfinished", (request) => {
    if (request.url().includes(".wasm")) fetched.push(request.url());
  });
  const missed: string[] = [];
  page.context().on("requestfailed", (request) => missed.push(new URL(request.url()).pathname));
  await page.context().setOffline(true);
  const ways = await opened("How the mats lie");
  await ways.getByRole("button", { name: "Along the walls or across them: lay them so" }).click();
  await answers(/^32 mats fit/);
  expect(fetched.length).toBeGreaterThan(0);
  // all that could not be had is the server's word on what is saved, which waits on the device
  expect(missed.filter((path) => !path.startsWith("/api/"))).toEqual([]);
  await page.context().setOffline(false);
  await page.getByText(/^Saved \d/).waitFor();
  errors.length = 0;
});
