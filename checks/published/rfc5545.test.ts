// RFC 5545, Internet Calendaring and Scheduling Core Object Specification, September 2009:
// 3.3.5 "DATE-TIME" (ambiguous and missing local times) and the weekly examples of 3.8.5.3
// "RRULE" from 2 September 1997, 09:00, America/New_York. Dates as printed there.
import { readPlainDate, readPlainTime, weeklyRecurrence, zonedStart } from "#kernels/calendar";
import { Temporal } from "temporal-polyfill";
import { expect, test } from "vitest";

const NEW_YORK = "America/New_York";

function day(text: string): Temporal.PlainDate {
  const date = readPlainDate(text);
  if (date === undefined) throw new Error(text);
  return date;
}

function at(date: Temporal.PlainDate, time: string): Temporal.ZonedDateTime {
  const clock = readPlainTime(time);
  if (clock === undefined) throw new Error(time);
  return zonedStart(date, clock, NEW_YORK);
}

const written = (dates: readonly Temporal.PlainDate[]): readonly string[] =>
  dates.map((date) => date.toString().slice(5));

test("3.3.5: a local time that comes twice is the first of the two", () => {
  // 1:30 on 4 November 2007 is UTC−4
  expect(at(day("2007-11-04"), "01:30").toString({ timeZoneName: "never" })).toBe(
    "2007-11-04T01:30:00-04:00",
  );
});

test("3.3.5: a local time that is jumped over is read with the offset before the gap", () => {
  // 2:30 on 11 March 2007 is 3:30, UTC−4
  expect(at(day("2007-03-11"), "02:30").toString({ timeZoneName: "never" })).toBe(
    "2007-03-11T03:30:00-04:00",
  );
});

test("3.8.5.3: weekly for ten occurrences, the last two in winter time", () => {
  const dates = weeklyRecurrence({
    start: day("1997-09-02"),
    interval: 1,
    weekdays: [],
    weekStart: 1,
    end: { count: 10 },
  });
  expect(written(dates)).toEqual([
    "09-02",
    "09-09",
    "09-16",
    "09-23",
    "09-30",
    "10-07",
    "10-14",
    "10-21",
    "10-28",
    "11-04",
  ]);
  const offsets = dates.map((date) => at(date, "09:00").offset);
  expect(offsets).toEqual([...Array<string>(8).fill("-04:00"), "-05:00", "-05:00"]);
});

test("3.8.5.3: weekly on Tuesday and Thursday for five weeks, UNTIL=19971007T000000Z", () => {
  const until = Temporal.Instant.from("1997-10-07T00:00:00Z");
  const dates = weeklyRecurrence({
    start: day("1997-09-02"),
    interval: 1,
    weekdays: [2, 4],
    weekStart: 7,
    end: { until: until.toZonedDateTimeISO(NEW_YORK).toPlainDate() },
  });
  expect(written(dates)).toEqual([
    "09-02",
    "09-04",
    "09-09",
    "09-11",
    "09-16",
    "09-18",
    "09-23",
    "09-25",
    "09-30",
    "10-02",
  ]);
});

test("3.8.5.3: every other week on Tuesday and Thursday, for eight occurrences", () => {
  const dates = weeklyRecurrence({
    start: day("1997-09-02"),
    interval: 2,
    weekdays: [2, 4],
    weekStart: 7,
    end: { count: 8 },
  });
  expect(written(dates)).toEqual(["09-02", "09-04", "09-16", "09-18", "09-30", "10-02", "10-14", "10-16"]);
});

test.each([
  { weekStart: 1, named: "Monday", expected: ["08-05", "08-10", "08-19", "08-24"] },
  { weekStart: 7, named: "Sunday", expected: ["08-05", "08-17", "08-19", "08-31"] },
])("3.8.5.3: every other Tuesday and Sunday with weeks from $named", ({ weekStart, expected }) => {
  const rule = { start: day("1997-08-05"), interval: 2, weekdays: [2, 7], weekStart, end: { count: 4 } };
  expect(written(weeklyRecurrence(rule))).toEqual(expected);
});
