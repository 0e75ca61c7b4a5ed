import { expect, test } from "vitest";
import { freshPage, phone } from "./chromium.ts";
import { faultsOf } from "./page-faults.ts";
import { storyServer } from "./story-server.ts";
import { type Evening, eveningOn, openDates } from "./tonight-story.ts";

const story = storyServer();

/*
 * A free first class: 18 mats, 16 wanted, the hall's own number is 60, 60 of 100 come and several in pairs. The sheet
 * says 19; the next one waits; 17 come, and the sheet hears of it.
 */
test("a free opening: nineteen are accepted, the twentieth waits, seventeen come, and the class sheet hears of it", async () => {
  const evening = await eveningOn(story.server.address, "opening");
  const { context, page, errors } = await freshPage(story.browser, phone);
  const sheet = `${story.server.address}/practice/${evening.practice}/classes/tuesday-evening`;
  await page.goto(sheet);
  const opening = page.getByRole("region", { name: "The opening" });
  await opening.getByText("Accept 21: there is room for 16").waitFor();
  await opening.getByRole("combobox", { name: "Those who say yes" }).selectOption("several come in pairs");
  await opening.getByText("Accept 19: there is room for 16").waitFor();

  await openDates(page, story.server.address, evening, 19);
  await accepted(evening);
  await page.goto(`${story.server.address}/practice/${evening.practice}/tonight`);
  await page
    .getByText(/19 of 19 mats taken\.$/)
    .first()
    .waitFor();
  await page.getByRole("button", { name: "Add a place" }).tap();
  const dialog = page.getByRole("dialog");
  await dialog.getByRole("textbox", { name: "Name", exact: true }).fill("Tessa Twenty");
  await dialog.getByRole("button", { name: "On the waiting list" }).tap();
  await page
    .getByText(/19 of 19 mats taken, 1 waits\.$/)
    .first()
    .waitFor();
  expect(await faultsOf(page)).toEqual([]);

  await page.getByText("All kept.").waitFor();
  for (const person of PEOPLE.slice(0, 17))
    await evening.act({ kind: "mark", session: evening.session, place: `pl-${person}`, as: "attended" });
  await page.reload();
  await page.getByText("17 here, 2 not marked yet.").waitFor();
  await page.getByRole("button", { name: "Close the register" }).tap();
  await page.getByRole("dialog").getByRole("button", { name: "Close the register" }).tap();
  await page.getByText("All kept.").waitFor();
  const kept = await evening.kept();
  expect(kept.closed).toBe(true);
  expect(kept.places.filter(({ state }) => state === "attended")).toHaveLength(17);
  expect(kept.places.filter(({ state }) => state === "not come")).toHaveLength(2);

  // the demo's Tuesday has a record of its own: tonight's heads are added to it
  await page.goto(sheet);
  const taking = page.locator("[data-from-register]");
  await taking.getByText("1 closed register of this class is not in its record yet.").waitFor();
  await taking.getByRole("button", { name: "Take the heads from the register" }).tap();
  await taking.getByText("Every closed register of this class is in its record.").waitFor();
  expect(errors).toEqual([]);
  await context.close();
});

const PAIRS = [0, 1, 2, 3, 4].map((it) => [`p-${it}`, `q-${it}`] as const);
const ALONE = [0, 1, 2, 3, 4, 5, 6, 7, 8].map((it) => [`s-${it}`] as const);
const PARTIES: readonly (readonly string[])[] = [...PAIRS, ...ALONE];
const PEOPLE = PARTIES.flat();

/** Five pairs and nine who come alone say yes. */
async function accepted({ act, session }: Evening): Promise<void> {
  for (const party of PARTIES) {
    for (const person of party)
      await act({ kind: "meet person", person, contact: { name: `Guest ${person}` } });
    const people = party.map((person) => ({ place: `pl-${person}`, person, how: "free" }));
    await act({ kind: "take place", session, people });
  }
}
