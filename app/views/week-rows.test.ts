import type { ChosenJson, RejectedJson } from "#core/week";
import { expect, it } from "vitest";
import { chosenRow, curveRows, hoursWords, rejectedRow, tieSentences } from "./week-rows.ts";

const names: Readonly<Record<string, string>> = {
  a: "Plum Yard Monday",
  b: "Cover, as it comes",
  c: "Private hour",
};
const write = {
  amount: (text: string) => `£${text}`.replace("£-", "−£"),
  name: (id: string) => names[id] ?? id,
};

const chosen = (part: Partial<ChosenJson>): ChosenJson => ({
  id: "a",
  name: "Plum Yard Monday",
  adds: "1196.00",
  minutesAWeek: 119,
  perHour: "13.11",
  frees: { evening: true, day: true },
  without: { leavesLess: "188.00", comes: ["c"], goes: ["a"], proven: true },
  ...part,
});

it("says what dropping a class would free, what it would cost and what would come instead", () => {
  expect(chosenRow(chosen({}), false, write)).toMatchObject({
    perHour: "£13.11",
    hours: "1 h 59 min",
    says:
      "Dropping it would free 1 h 59 min a week, the evening and the whole day. " +
      "The best week without it leaves £188.00 a year less: Private hour would come in its place.",
  });
});

it("says of a promise that letting it go may leave more, and of what was not proven that it was not", () => {
  const without = { leavesLess: "-12.00", comes: [], goes: ["a", "c"], proven: false };
  const { says, perHour } = chosenRow(chosen({ without, perHour: null, minutesAWeek: 0 }), true, write);
  expect(perHour).toBe("-");
  expect(says).toBe(
    "Dropping it would free the evening and the whole day. It is promised; without that promise the best week " +
      "without it and without Private hour leaves £12.00 a year more, as far as was found: nothing comes in its place.",
  );
});

it("says where nothing would be freed, nothing lost, or no week found", () => {
  const nothing = { frees: { evening: false, day: false }, minutesAWeek: 0 };
  const same = { leavesLess: "0.00", comes: ["b"], goes: ["a"], proven: true };
  expect(chosenRow(chosen({ ...nothing, without: same }), false, write).says).toBe(
    "Dropping it would free nothing. The best week without it leaves as much: Cover, as it comes would come in its place.",
  );
  expect(chosenRow(chosen({ ...nothing, without: null }), false, write).says).toMatch(
    /No week without it was found\.$/,
  );
});

const rejected = (part: Partial<RejectedJson>): RejectedJson => ({
  id: "c",
  name: "Private hour",
  lacksPerSession: "1.49",
  withIt: { leavesLess: "35.70", comes: ["c"], goes: ["a"], proven: true },
  noRoomFor: [],
  ...part,
});

const says = (part: Partial<RejectedJson>) => rejectedRow(rejected(part), write).says;

it("says what one that is not in the week lacks: money, room, or nothing", () => {
  expect(says({})).toBe(
    "Lacks £1.49 a session: with that much more it would take the place of Plum Yard Monday.",
  );
  expect(says({ withIt: { leavesLess: "35.70", comes: ["c", "b"], goes: [], proven: false } })).toBe(
    "Lacks £1.49 a session at most: with that much more it would come in beside all others, together with Cover, as it comes.",
  );
  expect(says({ lacksPerSession: "0.00" })).toBe(
    "Lacks nothing: a week in which it would take the place of Plum Yard Monday leaves as much.",
  );
  expect(says({ lacksPerSession: null, withIt: null, noRoomFor: ["3 evenings at most, from 18:00"] })).toBe(
    "No money brings it in: there is no room for it beside 3 evenings at most, from 18:00.",
  );
  expect(says({ lacksPerSession: null, withIt: null })).toBe("Not found out in time.");
});

it("tells a curve by what each row has more, and which row is shown", () => {
  const rows = curveRows(
    [
      { count: 1, leaves: "1217.52", proven: true, chosen: ["a"] },
      { count: 2, leaves: "3570.09", proven: true, chosen: ["a", "c"] },
      { count: 3, leaves: "3570.19", proven: false, chosen: ["b", "c", "d"] },
    ],
    2,
    write,
  );
  expect(rows.map(({ more, classes, now, leaves }) => [more, classes, now, leaves])).toEqual([
    ["", "Plum Yard Monday", false, "£1217.52"],
    // 3570.09 − 1217.52, without the noise of binary fractions
    ["£2352.57", "and Private hour", true, "£3570.09"],
    ["£0.10", "Cover, as it comes; d in place of Plum Yard Monday", false, "£3570.19 or more"],
  ]);
});

it("tells weeks that leave as much by what they have instead", () => {
  const head = { chosen: ["a", "b"], ties: [["a", "c"], ["a"], ["a", "b", "c"]] };
  expect(tieSentences(head, write)).toEqual([
    "As much is left with Private hour in place of Cover, as it comes.",
    "As much is left without Cover, as it comes.",
    "As much is left with Private hour besides.",
  ]);
  expect(tieSentences({ chosen: [], ties: [] }, write)).toEqual([]);
});

it("writes minutes as hours", () => {
  expect([59, 60, 119].map(hoursWords)).toEqual(["59 min", "1 h", "1 h 59 min"]);
});
