import * as fc from "fast-check";
import { Temporal } from "temporal-polyfill";
import { expect, test } from "vitest";
import {
  isZone,
  monthKey,
  readPlainDate,
  readPlainTime,
  spanCovering,
  weeklyDates,
  weeklyRecurrence,
} from "./index.ts";

const day = (text: string): Temporal.PlainDate => Temporal.PlainDate.from(text);

test("only a real date in the plain form is a date", () => {
  expect(readPlainDate("2028-02-29")?.toString()).toBe("2028-02-29");
  for (const text of [
    "2027-02-29",
    "2027-13-01",
    "2027-1-1",
    "28/02/2027",
    "2027-02-28T10:00",
    "20270228",
    "",
  ]) {
    expect(readPlainDate(text)).toBeUndefined();
  }
});

test("only HH:MM within the day is a time", () => {
  expect(readPlainTime("18:05")?.toString()).toBe("18:05:00");
  for (const text of ["24:00", "7:30", "18:60", "18:30:00", "6pm", ""])
    expect(readPlainTime(text)).toBeUndefined();
});

test("weekly dates include both ends when they fall on the weekday", () => {
  // Tuesdays from Tuesday 5 to Tuesday 26 January 2027
  const dates = weeklyDates(day("2027-01-05"), day("2027-01-26"), 2).map(String);
  expect(dates).toEqual(["2027-01-05", "2027-01-12", "2027-01-19", "2027-01-26"]);
});

test("weekly dates of a span that ends before it begins are none", () => {
  expect(weeklyDates(day("2027-01-05"), day("2027-01-04"), 2)).toEqual([]);
});

const someDate = fc.integer({ min: 0, max: 40_000 }).map((days) => day("1970-01-01").add({ days }));

test("weekly dates are exactly the days of that weekday in the span", () => {
  fc.assert(
    fc.property(
      someDate,
      fc.integer({ min: 0, max: 800 }),
      fc.integer({ min: 1, max: 7 }),
      (from, days, weekday) => {
        // day by day, by counting
        const all = Array.from({ length: days + 1 }, (_, count) => from.add({ days: count }));
        const expected = all.filter((date) => date.dayOfWeek === weekday).map(String);
        expect(weeklyDates(from, from.add({ days }), weekday).map(String)).toEqual(expected);
      },
    ),
    { numRuns: 60 },
  );
});

test("a weekday that is none throws with its value", () => {
  expect(() => weeklyDates(day("2027-01-05"), day("2027-01-26"), 8)).toThrow("8");
  const rule = { start: day("2027-01-05"), interval: 0, weekdays: [], weekStart: 1, end: { count: 3 } };
  expect(() => weeklyRecurrence(rule)).toThrow("0");
});

test("the first span that covers a date is found, its ends included", () => {
  const spans = [
    { from: day("2026-12-21"), until: day("2027-01-03"), why: "Christmas" },
    { from: day("2027-01-03"), until: day("2027-01-09"), why: "floor" },
  ];
  const why = (text: string): string | undefined => spanCovering(spans, day(text))?.why;
  expect(["2026-12-20", "2026-12-21", "2027-01-03", "2027-01-09", "2027-01-10"].map(why)).toEqual([
    undefined,
    "Christmas",
    "Christmas",
    "floor",
    undefined,
  ]);
});

test("a month is named by year and month", () => {
  expect(monthKey(day("2027-01-31"))).toBe("2027-01");
});

test("a zone is known or not, without an error", () => {
  expect([
    isZone("Europe/London"),
    isZone("America/Chicago"),
    isZone("Europe/Marlsford"),
    isZone(""),
  ]).toEqual([true, true, false, false]);
});
