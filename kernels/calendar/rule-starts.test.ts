import * as fc from "fast-check";
import { Temporal } from "temporal-polyfill";
import { expect, test } from "vitest";
import { isoWeek } from "./iso-week.ts";
import { ruleStarts } from "./rule-starts.ts";
import { weeklyRecurrence } from "./weekly-recurrence.ts";

const at = (text: string): Temporal.ZonedDateTime => Temporal.ZonedDateTime.from(`${text}[Europe/London]`);
const WEEKDAYS = ["MO", "TU", "WE", "TH", "FR", "SA", "SU"];

function dates(rule: string, start: string, from: string, end: string): readonly string[] {
  const read = ruleStarts({ rule, start: at(start) }, at(from), at(end));
  return read.kind === "starts" ? read.starts.map((it) => it.toPlainDate().toString()) : [read.kind];
}

test("a rule that began long ago has its dates in the span, the end not included", () => {
  // Tuesdays of January 2027 are 5, 12, 19 and 26
  expect(dates("FREQ=WEEKLY;BYDAY=TU", "1995-01-03T19:00", "2027-01-05T19:00", "2027-01-26T19:00")).toEqual([
    "2027-01-05",
    "2027-01-12",
    "2027-01-19",
  ]);
});

test("a time that the clocks jump over is no occurrence", () => {
  expect(dates("FREQ=DAILY", "2026-03-27T01:30", "2026-03-28T00:00", "2026-03-31T00:00")).toEqual([
    "2026-03-28",
    "2026-03-30",
  ]);
});

test("a rule that nobody can read says so, and one that never ends to be counted too", () => {
  const span = [at("2027-01-01T00:00"), at("2027-03-01T00:00")] as const;
  const kind = (rule: string): string => ruleStarts({ rule, start: at("1995-01-03T19:00") }, ...span).kind;
  expect(["FREQ=OFTEN", "", "FREQ=WEEKLY;BYDAY=XX", "FREQ=WEEKLY;INTERVAL=0"].map(kind)).toEqual(
    Array<string>(4).fill("unreadable"),
  );
  expect(["FREQ=SECONDLY", "FREQ=MINUTELY"].map(kind)).toEqual(["too many", "too many"]);
});

test("every second, third … week by the rule is as our own weekly recurrence has it", () => {
  const shape = fc.record({
    days: fc.integer({ min: 0, max: 3000 }),
    interval: fc.integer({ min: 1, max: 5 }),
    weekdays: fc.uniqueArray(fc.integer({ min: 1, max: 7 }), { minLength: 1, maxLength: 4 }),
    weekStart: fc.constantFrom(1, 7),
    count: fc.integer({ min: 1, max: 30 }),
  });
  fc.assert(
    fc.property(shape, ({ days, interval, weekdays, weekStart, count }) => {
      const start = Temporal.PlainDate.from("2020-01-01").add({ days });
      const own = weeklyRecurrence({ start, interval, weekdays, weekStart, end: { count } }).map(String);
      const byday = weekdays.map((it) => WEEKDAYS[it - 1] ?? "").join(",");
      const rule = `FREQ=WEEKLY;INTERVAL=${interval};COUNT=${count};BYDAY=${byday};WKST=${weekStart === 1 ? "MO" : "SU"}`;
      const from = `${String(start)}T18:30`;
      expect(dates(rule, from, from, `${String(start.add({ years: 4 }))}T18:30`)).toEqual(own);
    }),
    { numRuns: 60 },
  );
});

const week = (text: string): string => isoWeek(Temporal.PlainDate.from(text));

test("2026 has a week 53, and its first days belong to the week of their Thursday", () => {
  expect(["2026-01-01", "2025-12-29", "2026-12-31", "2027-01-03", "2027-01-04"].map(week)).toEqual([
    "2026-W01",
    "2026-W01",
    "2026-W53",
    "2026-W53",
    "2027-W01",
  ]);
});
