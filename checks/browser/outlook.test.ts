import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { freshPage, phone, wide, wordsOn } from "./chromium.ts";
import { fill, part } from "./page-parts.ts";
import { storyServer } from "./story-server.ts";

const story = storyServer();

async function openClass(page: Page, name: string): Promise<void> {
  await page.goto(story.server.address);
  await page.getByRole("button", { name: "Open Marlsford, in pounds" }).click();
  await page.getByRole("heading", { name: "Classes", level: 1 }).waitFor();
  await page.getByRole("link", { name }).click();
}

const strange = /NaN|undefined|Infinity|null/;

test("an opening is answered, takes pairs and costs, and learns from what happened", async () => {
  const { context, page, errors } = await freshPage(story.browser, wide);
  await openClass(page, "Tuesday evening");
  const opening = part(page, "The opening");
  // published: 16 mats at 0.6 take 21
  await opening.getByText("Accept 21: there is room for 16").waitFor();
  await opening.getByText("At the door stop at 59 people").waitFor();
  await opening.getByRole("combobox", { name: "Those who say yes" }).selectOption("several come in pairs");
  await opening.getByText("Accept 19: there is room for 16").waitFor();
  await opening.getByText("If each decided alone it would be 21").waitFor();
  await opening.getByRole("checkbox", { name: "These are paid places" }).check();
  await opening.getByText("a paid place is a promise").waitFor();
  await opening.getByRole("checkbox", { name: "These are paid places" }).uncheck();
  await opening.getByRole("checkbox", { name: "Weigh a person sent home against an empty mat" }).check();
  await opening.getByText(/^By what an empty mat and a person sent home cost you it would be/).waitFor();

  await opening.getByRole("checkbox", { name: "It has been: write down what happened" }).check();
  await fill(opening.getByRole("textbox", { name: "Of them came" }), "14");
  await opening.getByText("14 came of 0 accepted.").first().waitFor();
  await fill(opening.getByRole("textbox", { name: "Were accepted" }), "19");
  await opening.getByText(/^After what happened the turn-up is 6\d(\.\d)? %/).waitFor();
  await fill(opening.getByRole("textbox", { name: "Of those who came, came again" }), "7");
  await opening.getByText(/^Of those who came .* come again, by what was seen so far\.$/).waitFor();
  await fill(opening.getByRole("textbox", { name: "Of 100 accepted, so many come" }), "160");
  await opening.getByText("160 cannot be right here. Give a number from 0 to 100.").waitFor();
  await fill(opening.getByRole("textbox", { name: "Of 100 accepted, so many come" }), "70");
  expect(await opening.getByRole("button", { name: /so many come: known/ }).count()).toBe(1);

  await page
    .getByText(/^Saved/)
    .first()
    .waitFor();
  await page.reload();
  await part(page, "The opening")
    .getByText(/^After what happened the turn-up is/)
    .waitFor();
  expect(await wordsOn(page)).not.toMatch(strange);
  expect(errors).toEqual([]);
  await context.close();
});

test("on a phone a session is written down on the next teaching date, slips are told, and the outlook follows", async () => {
  const { context, page, errors } = await freshPage(story.browser, phone);
  await openClass(page, "Tuesday evening");
  const going = part(page, "How it is going");
  await going.getByText("Learned from 11 sessions").waitFor();
  expect(await going.getByRole("img").count()).toBe(1);
  await going.getByText(/^1 of 11 was full: about/).waitFor();
  const fresh = going.getByRole("group", { name: "Write a session down" });
  // the demo's record ends on 24 November
  expect(await fresh.getByLabel("Session of").inputValue()).toBe("2026-12-01");
  const write = fresh.getByRole("button", { name: "Write it down" });
  await write.click();
  await fresh.getByText("Say how many were on mats; 0 if nobody came.").waitFor();
  const heads = fresh.getByRole("textbox", { name: "On mats" });
  await heads.fill("-3");
  await fresh.getByText("-3 cannot be right here.").waitFor();
  await heads.fill("3.5");
  await fresh.getByText("3.5 is not a whole number.").waitFor();
  await heads.fill("15");
  await fresh.getByLabel("Session of").fill("2026-11-24");
  await write.click();
  await fresh.getByText("That day is written down already. Mend it below.").waitFor();
  await fresh.getByLabel("Session of").fill("2026-12-01");
  await write.click();
  await going.getByText("Learned from 12 sessions").waitFor();
  expect(await fresh.getByLabel("Session of").inputValue()).toBe("2026-12-08");
  await fresh.getByText("Tuesday 1 December 2026 is written down: 15 on mats.").waitFor();

  const last = going.getByRole("listitem", { name: "Tuesday 1 December 2026" });
  await fill(last.getByRole("textbox", { name: "On mats" }), "17");
  await last.getByText("17 people were on 16 places.").waitFor();
  await going.getByText("Not worked out, because something that was entered cannot be used.").waitFor();
  await going
    .getByText(/^Not saved: 17 people were on 16 places\./)
    .first()
    .waitFor();
  await fill(last.getByRole("textbox", { name: "Places then" }), "18");
  await going.getByText("Learned from 12 sessions").waitFor();
  await fill(last.getByRole("textbox", { name: "First time" }), "18");
  await last.getByText("18 of 17 people were there for the first time.").waitFor();
  await fill(last.getByRole("textbox", { name: "First time" }), "2");
  await last.getByLabel("Date").fill("2026-11-24");
  await going.getByText("24 November 2026 is there twice.").first().waitFor();
  await going
    .getByText(/^Not saved: 24 November 2026 is there twice\./)
    .first()
    .waitFor();
  await going
    .getByRole("listitem", { name: "Tuesday 24 November 2026" })
    .first()
    .getByLabel("Date")
    .fill("2026-12-01");
  await going.getByText("Learned from 12 sessions").waitFor();
  await last.getByRole("checkbox", { name: "Cancelled" }).check();
  await going.getByText("Learned from 11 sessions").waitFor();

  const luck = going.getByRole("textbox", { name: /^Of 100 people, so many more or fewer/ });
  await fill(luck, "90");
  await going.getByText("90 cannot be right here. Give a number from 0 to 80.").waitFor();
  await fill(luck, "0");
  await expect.poll(() => going.getByText("Luck that an evening shares").count()).toBe(0);
  await fill(luck, "20");
  await going.getByText("Luck that an evening shares").waitFor({ state: "attached" });

  await going.getByText("The seasons of the year", { exact: true }).first().click();
  await fill(going.getByRole("textbox", { name: "December" }), "1.3");
  await expect.poll(() => going.getByText("How much thinner a December").count()).toBe(0);
  await going
    .getByText(/^Saved/)
    .first()
    .waitFor();
  await page.reload();
  await part(page, "How it is going").getByText("Learned from 11 sessions").waitFor();
  expect(await wordsOn(page)).not.toMatch(strange);
  expect(errors).toEqual([]);
  await context.close();
});

test("a class that never met is answered from guesses; one session, all full and all empty are told plainly", async () => {
  const { context, page, errors } = await freshPage(story.browser, phone);
  await openClass(page, "Wednesday");
  const going = part(page, "How it is going");
  await going.getByText(/^Nothing has happened yet: all of it rests on your guesses/).waitFor();
  await going.getByText("No session is written down yet.").waitFor();
  const next = part(page, "What to do next");
  await next.getByText(/^Too early to say whether to keep it: 0 sessions are written down/).waitFor();
  const fresh = going.getByRole("group", { name: "Write a session down" });
  const down = async (heads: string) => {
    await fresh.getByRole("textbox", { name: "On mats" }).fill(heads);
    await fresh.getByRole("button", { name: "Write it down" }).click();
  };
  await fill(going.getByRole("textbox", { name: "Places on an ordinary evening" }), "5");
  await down("5");
  await going.getByText("1 session is too few to decide anything on.").waitFor();
  await next.getByText(/^Too early to say whether to keep it: 1 session is written down/).waitFor();
  await next.getByText("Advice is firm only after ten teaching weeks").waitFor();
  for (let more = 0; more < 3; more += 1) await down("5");
  await going.getByText(/^At least about .* people want to come to a session/).waitFor();
  await going.getByText(/^Every session was full: heads alone cannot tell/).waitFor();
  await next
    .getByText(/^(Keep|Change|It leans)/)
    .first()
    .waitFor();
  const rows = going.getByRole("list", { name: "Sessions, the last one first" }).getByRole("listitem");
  for (const row of await rows.all()) await fill(row.getByRole("textbox", { name: "On mats" }), "0");
  await going.getByText("None of them was full", { exact: false }).waitFor();
  await next
    .getByText(/^(Keep|Change|It leans)/)
    .first()
    .waitFor();
  for (let left = 4; left > 1; left -= 1)
    await rows
      .nth(1)
      .getByRole("button", { name: /^Take away/ })
      .click();
  await going.getByText("1 session is too few to decide anything on.").waitFor();
  expect(await wordsOn(page)).not.toMatch(strange);
  expect(errors).toEqual([]);
  await context.close();
});

test("what to do next weighs the notice, full evenings and the next session", async () => {
  const { context, page, errors } = await freshPage(story.browser, wide);
  await openClass(page, "Tuesday evening");
  const next = part(page, "What to do next");
  await next.getByText("Keep the class.", { exact: true }).waitFor();
  await next.getByText(/^The chance that it comes to the \d+ people it needs is/).waitFor();
  await fill(next.getByRole("textbox", { name: "The best other use of the evening would leave" }), "120");
  await next
    .getByText(/there are 16 places|^Change something/)
    .first()
    .waitFor();
  await fill(next.getByRole("textbox", { name: "The best other use of the evening would leave" }), "0");
  await next.getByRole("button", { name: "Add a day, if it is not any day" }).click();
  await next.getByRole("button", { name: "Add a day, if it is not any day" }).click();
  await next.getByLabel("Day", { exact: true }).first().fill("2026-12-15");
  await next.getByLabel("Day", { exact: true }).last().fill("2027-04-13");
  await next.getByRole("table", { name: /^The days on which notice can be given/ }).waitFor();
  await next.getByText("Keep the class (notice on 15 December 2026).").waitFor();

  await fill(next.getByRole("textbox", { name: "Mats that a tighter plan would add" }), "2");
  await next.getByText(/^Try a tighter mat plan first: it leaves £/).waitFor();
  await next.getByRole("checkbox", { name: "Weigh a bigger hall" }).check();
  await fill(next.getByRole("textbox", { name: "It has", exact: true }), "10");
  await next.getByText("A hall of 10 places is no bigger than the one of 16.").first().waitFor();
  await fill(next.getByRole("textbox", { name: "It has", exact: true }), "24");
  await next.getByText(/^A bigger hall leaves £/).waitFor();
  await next.getByRole("checkbox", { name: "Weigh a second class" }).check();
  await fill(next.getByRole("textbox", { name: "It would cost", exact: true }), "300");
  await next.getByText(/^A second class leaves £[\d.,]+ a session less\.$/).waitFor();

  await next.getByRole("checkbox", { name: "Ask whether to run it, have it covered or cancel" }).check();
  await next.getByText(/^Run it yourself on /).waitFor();
  await fill(next.getByRole("textbox", { name: "Will come, as you think" }), "0");
  await fill(next.getByRole("textbox", { name: "Cancelling saves you" }), "10");
  await next.getByText(/^Cancel it on /).waitFor();
  await fill(next.getByRole("textbox", { name: "Will come, as you think" }), "12");
  await fill(next.getByRole("textbox", { name: "Cancelling saves you" }), "90");
  await fill(next.getByRole("textbox", { name: "A teacher who would cover takes" }), "35");
  await next.getByText(/^Have it covered on /).waitFor();
  await next.getByText("Ask the hall whether somebody else may teach under your hire.").waitFor();
  expect(await wordsOn(page)).not.toMatch(strange);
  expect(errors).toEqual([]);
  await context.close();
});
