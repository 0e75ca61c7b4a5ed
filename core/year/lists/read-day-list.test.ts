import * as fc from "fast-check";
import { Temporal } from "temporal-polyfill";
import { expect, test } from "vitest";
import type { ListContext } from "./day-list-types.ts";
import { readDayList } from "./read-day-list.ts";

const day = (text: string): Temporal.PlainDate => Temporal.PlainDate.from(text);
const marlsford: ListContext = {
  from: day("2026-09-01"),
  until: day("2027-08-31"),
  locale: "en-GB",
  called: "school holiday",
};
const cedarFork: ListContext = { ...marlsford, locale: "en-US" };

function read(text: string, context = marlsford): readonly string[] {
  const { days, notUnderstood } = readDayList(text, context);
  return [
    ...days.map(({ from, until, why }) => `${String(from)}..${String(until)} ${why}`),
    ...notUnderstood.map(({ line, says }) => `${line}: ${says}`),
  ];
}

test.each([
  [
    "Autumn half-term: Monday 26 October to Friday 30 October 2026",
    "2026-10-26..2026-10-30 Autumn half-term",
  ],
  ["Autumn half-term Mon 26 – Fri 30 Oct 2026", "2026-10-26..2026-10-30 Autumn half-term"],
  ["26-30 October 2026 half-term", "2026-10-26..2026-10-30 half-term"],
  ["26th to 30th October", "2026-10-26..2026-10-30 school holiday"],
  ["26/10/2026 - 30/10/2026 floor resealed", "2026-10-26..2026-10-30 floor resealed"],
  ["26.10.26 – 30.10.26: floor resealed", "2026-10-26..2026-10-30 floor resealed"],
  ["2026-10-26 to 2026-10-30", "2026-10-26..2026-10-30 school holiday"],
  ["Christmas 21 December to 3 January 2027", "2026-12-21..2027-01-03 Christmas"],
  ["21 December – 3 January: Christmas", "2026-12-21..2027-01-03 Christmas"],
  ["Half-term w/c 26 October", "2026-10-26..2026-11-01 Half-term"],
  ["Week commencing Monday 15 February 2027", "2027-02-15..2027-02-21 school holiday"],
  ["Sept 7", "2026-09-07..2026-09-07 school holiday"],
  ["INSET day on Friday the 4th of September", "2026-09-04..2026-09-04 INSET day"],
])("“%s” is understood", (line, expected) => {
  expect(read(line)).toEqual([expected]);
});

test.each([
  ["10/26/2026 - 10/30/2026 fall break", "2026-10-26..2026-10-30 fall break"],
  ["Spring break: March 22–26, 2027", "2027-03-22..2027-03-26 Spring break"],
  ["Thursday, November 26, 2026 Thanksgiving", "2026-11-26..2026-11-26 Thanksgiving"],
  ["Nov. 26", "2026-11-26..2026-11-26 school holiday"],
])("in the United States “%s” is understood", (line, expected) => {
  expect(read(line, cedarFork)).toEqual([expected]);
});

test("4/5/2027 is 4 May here and April 5 in the United States", () => {
  expect(read("4/5/2027")).toEqual(["2027-05-04..2027-05-04 school holiday"]);
  expect(read("4/5/2027", cedarFork)).toEqual(["2027-04-05..2027-04-05 school holiday"]);
});

test("each line that gives no days is told by its number, with why (YEAR-8)", () => {
  const text = [
    "# what the county says",
    "",
    "half-term in October",
    "31 June 2027",
    "10/26/2026",
    "Tuesday 26 October 2026",
    "30 October to 26 October 2026",
    "1 May, 2 May, 3 May",
    "Autumn term: 3 September to 18 December 2026",
    "5 May 1997 to 7 May",
    "Mon 3 and Fri 7 May",
    "two weeks from 20 December 2026",
  ].join("\n");
  expect(read(text)).toEqual([
    "3: there is no date in it.",
    "4: 31 June is no date of 2027.",
    "5: there is no month 26; the day is read first, 26/10/2026.",
    "6: 26 October 2026 is a Monday, not a Tuesday.",
    "7: it ends on 2026-10-26, before it begins on 2026-10-30.",
    "8: there are more than two dates in it; write each on a line of its own.",
    "9: it seems to tell of a term, not of days off; write the days off instead.",
    "10: from 1997-05-05 to 2027-05-07 is more than a year.",
    "11: a day of the week has a number beside it that cannot be read as a date.",
    "12: it tells of weeks but has one date; write the last day too.",
  ]);
});

test("a date without a year lies in the year that is planned, or is told", () => {
  const autumn: ListContext = { ...marlsford, until: day("2026-12-31") };
  expect(read("3 March", autumn)).toEqual([
    "1: 3 March is no date between 2026-09-01 and 2026-12-31; write the year beside it.",
  ]);
});

test("whatever is pasted, every line with something on it is either understood or told", () => {
  const piece = fc.constantFrom(
    "26",
    "Oct",
    "October",
    "to",
    "–",
    "/",
    "2026",
    "31",
    "Mon",
    "half-term",
    "\u0000",
  );
  const line = fc.oneof(
    fc.string(),
    fc.array(piece, { maxLength: 8 }).map((parts) => parts.join(" ")),
  );
  fc.assert(
    fc.property(fc.array(line, { maxLength: 6 }), (lines) => {
      const text = lines.map((it) => it.replace(/[\r\n]/g, " ")).join("\n");
      const kept = text.split("\n").map((it) => it.replaceAll("\uE000", "").trim());
      const counted = kept.filter((it) => it !== "" && !it.startsWith("#")).length;
      const { days, notUnderstood } = readDayList(text, marlsford);
      expect(days.length + notUnderstood.length).toBe(counted);
      for (const { from, until, why } of days) {
        expect(Temporal.PlainDate.compare(from, until)).toBeLessThanOrEqual(0);
        expect(why).not.toBe("");
      }
    }),
  );
});

test("a list as long as a book is read in a moment, and a line as long as one is cut", () => {
  const { days, notUnderstood } = readDayList(
    `${"26 ".repeat(100_000)}\n${"1 May 2027\n".repeat(2000)}`,
    marlsford,
  );
  expect([days.length, notUnderstood.length]).toEqual([2000, 1]);
});
