import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { freshPage, phone, wide, wordsOn } from "./chromium.ts";
import { faultsOf } from "./page-faults.ts";
import { fill, part } from "./page-parts.ts";
import { storyServer } from "./story-server.ts";

const story = storyServer();

async function openWeek(page: Page, demo = "Open Marlsford, in pounds"): Promise<void> {
  await page.goto(story.server.address);
  await page.getByRole("button", { name: demo }).click();
  await page.getByRole("heading", { name: "Classes", level: 1 }).waitFor();
  await page.getByRole("navigation", { name: "Places" }).getByRole("link", { name: "Week and year" }).click();
  await page.getByRole("heading", { name: "The week", level: 1 }).waitFor();
}

async function workedOut(page: Page): Promise<void> {
  await page.getByText("All worked out.").first().waitFor({ timeout: 60_000 });
}

const strange = /NaN|undefined|Infinity|null|\[object/;

test("the week of the demo is proven, drawn, told day by day, and each class and each candidate is answered", async () => {
  const { context, page, errors } = await freshPage(story.browser, wide);
  await openWeek(page);
  const best = part(page, "The best week");
  await best.getByText(/^The best week earns £[\d,.]+ a year after travel: 7 classes on/).waitFor();
  await workedOut(page);
  await best.getByText("Proven: no week within these limits leaves more.").waitFor();
  expect(await best.getByRole("img").count()).toBe(1);
  const days = best.getByRole("list", { name: "The week day by day" });
  await days.getByText(/Thursday beginners, 18:30 to 19:30/).waitFor();
  await days.getByText("Choir, 19:15 to 21:30").waitFor();
  const table = page.getByRole("table", { name: "What each class of the week does for it" });
  expect(await table.getByRole("row").count()).toBe(8);
  const others = page.getByRole("list", { name: "What is not in the week" }).getByRole("listitem");
  // nine others and four of her own, seven of them in the week
  expect(await others.count()).toBe(6);
  await others
    .filter({ hasText: "Plum Yard Thursday" })
    .getByText(/no room for it beside the promise of/)
    .waitFor();
  const curves = page.getByRole("table", { name: /^The most that is left a year, by classes a week/ });
  await curves.getByRole("row", { name: /^7 \(as shown\)/ }).waitFor();
  await page.getByText(/^The lightest week that earns £5,000\.00 a year earns/).waitFor();
  await best.getByText("Show the working").click();
  await best.getByRole("table", { name: "The ways" }).waitFor();
  expect(await wordsOn(page)).not.toMatch(strange);
  expect(errors).toEqual([]);
  await context.close();
});

test("what if: a class is dropped, a cap is changed, both stand beside the present week and are taken back with one press", async () => {
  const { context, page, errors } = await freshPage(story.browser, wide);
  await openWeek(page);
  await workedOut(page);
  const before = await part(page, "The best week").getByRole("status").first().innerText();
  await page.getByRole("button", { name: "Try without Lunch at the mill" }).click();
  const bar = part(page, "On trial");
  await bar.getByText("without Lunch at the mill. Nothing of it is kept.").waitFor();
  const whatIf = part(page, "What if");
  await whatIf.getByText(/Lunch at the mill go\.$/).waitFor();
  expect(await whatIf.getByRole("img").count()).toBe(2);
  await whatIf
    .getByRole("list", { name: "The present week, day by day" })
    .getByText(/Lunch at the mill/)
    .waitFor();
  await fill(page.getByRole("textbox", { name: "Classes a week at most" }), "5");
  await bar.getByText(/without Lunch at the mill; 5 classes a week at most/).waitFor();
  await whatIf.getByRole("row", { name: /^Classes a week 7 5 −2/ }).waitFor();
  expect(await faultsOf(page)).toEqual([]);
  await bar.getByRole("button", { name: "Take it back" }).click();
  await page.getByRole("button", { name: /^What if: try changes/ }).waitFor();
  expect(await page.getByRole("textbox", { name: "Classes a week at most" }).inputValue()).toBe("7");
  expect(await part(page, "The best week").getByRole("status").first().innerText()).toBe(before);

  await page.getByRole("button", { name: "at most 5" }).click();
  await whatIf.getByRole("row", { name: /^Classes a week 7 5 −2/ }).waitFor();
  await bar.getByRole("button", { name: "Keep it" }).click();
  await part(page, "The best week")
    .getByText(/a year after travel: 5 classes on/)
    .waitFor();
  await page
    .getByText(/^Saved/)
    .first()
    .waitFor();
  await page.reload();
  await part(page, "The best week")
    .getByText(/a year after travel: 5 classes on/)
    .waitFor();
  expect(await page.getByRole("textbox", { name: "Classes a week at most" }).inputValue()).toBe("5");
  expect(errors).toEqual([]);
  await context.close();
});

test("on a phone a class, its place and its way are entered once, and slips are told where they are", async () => {
  const { context, page, errors } = await freshPage(story.browser, phone);
  await openWeek(page);
  await workedOut(page);
  await page.getByText(/^7 places/).click();
  await page.getByRole("button", { name: "Add a place" }).click();
  await page.getByRole("textbox", { name: "Place 5 on the map" }).waitFor();
  await fill(page.getByRole("textbox", { name: "Name of the place" }).last(), "Ferry Lane School");
  await page.getByRole("button", { name: "Add what else you could teach" }).click();
  const fresh = page.locator("details[open]", { has: page.getByLabel("What it is called") });
  await fresh.getByLabel("What it is called").fill("School staff");
  await fresh.getByLabel("Place").selectOption({ label: "Ferry Lane School" });
  await fresh.getByLabel("Day").selectOption({ label: "Sunday" });
  await fresh.getByLabel("Begins", { exact: true }).fill("15:45");
  await fill(fresh.getByRole("textbox", { name: "It pays, before travel" }), "90.00");
  await page.getByText("Nobody says how long it takes between Home and Ferry Lane School.").first().waitFor();
  const way = page.getByRole("group", { name: "Home to Ferry Lane School" });
  await fill(way.getByRole("textbox", { name: "Minutes" }), "18");
  // 18 minutes at 40 km an hour are a guess of 12 km
  expect(await way.getByRole("textbox", { name: "Kilometres" }).inputValue()).toBe("12");
  await way.getByRole("button", { name: /Kilometres: guess/ }).waitFor();
  await part(page, "The best week")
    .getByText(/School staff, 15:45 to 16:45, Ferry Lane School/)
    .waitFor();
  expect(await faultsOf(page)).toEqual([]);

  await fill(page.getByRole("textbox", { name: "Classes a week at most" }), "0");
  await page.getByText("A cap of 0 classes a week leaves no week to plan.").first().waitFor();
  await fill(page.getByRole("textbox", { name: "Classes a week at most" }), "7");
  await fresh.getByLabel("Begins", { exact: true }).fill("23:30");
  await page
    .getByText("School staff reaches across midnight, with the time before and after it.")
    .first()
    .waitFor();
  await fresh.getByLabel("Begins", { exact: true }).fill("15:45");
  await fresh.getByLabel("Day").selectOption({ label: "Thursday" });
  await fresh.getByLabel("Begins", { exact: true }).fill("18:00");
  await fresh.getByLabel("In the week").selectOption({ label: "promised" });
  await page
    .getByText(
      /School staff and Thursday beginners are both promised, and they overlap|Thursday beginners and School staff are both promised, and they overlap/,
    )
    .first()
    .waitFor();
  await fresh.getByLabel("Day").selectOption({ label: "Sunday" });
  await fill(page.getByRole("textbox", { name: "Home on the map" }), "north");
  await page.getByText("“north” is not a point on the map.").waitFor();
  await fill(page.getByRole("textbox", { name: "Home on the map" }), "51.21, -2.18");
  await fill(page.getByRole("textbox", { name: "Days without a class at least" }), "6");
  await page
    .getByText(/^No week can keep to these together: /)
    .first()
    .waitFor();
  expect(await faultsOf(page)).toEqual([]);
  await fill(page.getByRole("textbox", { name: "Days without a class at least" }), "1");
  await part(page, "The best week")
    .getByText(/^The best week earns/)
    .waitFor();
  await page
    .getByText(/^Saved/)
    .first()
    .waitFor();
  await page.reload();
  await part(page, "The best week")
    .getByText(/School staff, 18:00 to 19:00/)
    .waitFor();
  expect(await wordsOn(page)).not.toMatch(strange);
  expect(errors).toEqual([]);
  await context.close();
});

test("a practice with nothing says what to begin with; one in dollars tells the hours as its readers do", async () => {
  const { context, page, errors } = await freshPage(story.browser, phone);
  await openWeek(page, "Open Cedar Fork, in dollars");
  await workedOut(page);
  const days = page.getByRole("list", { name: "The week day by day" });
  await days.getByText(/Monday after work, 5:45 pm to 7:00 pm/).waitFor();
  await page.getByText(/^The best week earns \$/).waitFor();
  expect(await faultsOf(page)).toEqual([]);
  await page.evaluate(async () => {
    const body = JSON.stringify({ action: "action-bare-week", id: "bare-week", start: "empty" });
    await fetch("/api/practices", { method: "POST", headers: { "content-type": "application/json" }, body });
  });
  await page.goto(`${story.server.address}/practice/bare-week/week`);
  await page.getByText("There is nothing yet that could be taught.").waitFor();
  expect(await faultsOf(page)).toEqual([]);
  await page.getByRole("button", { name: "Add what else you could teach" }).click();
  await page.getByText(/^No class of these leaves anything/).waitFor();
  const pays = page.getByRole("textbox", { name: "It pays, before travel" });
  await fill(pays, "twenty");
  await page
    .getByText(/“twenty”/)
    .first()
    .waitFor();
  await fill(pays, "20");
  await page.getByText(/^The best week earns £/).waitFor();
  expect(await wordsOn(page)).not.toMatch(strange);
  expect(errors).toEqual([]);
  await context.close();
});
