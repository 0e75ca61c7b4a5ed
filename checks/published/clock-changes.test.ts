// Clock changes of Europe/London, America/New_York and America/Chicago in 2026 and 2027, from the zone rules (IANA time
// zone database, files europe and northamerica, rules EU and US), read there; the local times beside
// them are worked out from those rules by hand. The dates of the other years are the last Sundays of March
// and October, and the second Sunday of March and first of November, by the same rules.
import {
  beforeStart,
  clockChanges,
  clockOn,
  readPlainDate,
  readPlainTime,
  zonedStart,
} from "#kernels/calendar";
import { Temporal } from "temporal-polyfill";
import { expect, test } from "vitest";

function start(date: string, time: string, zone: string): Temporal.ZonedDateTime {
  const day = readPlainDate(date);
  const clock = readPlainTime(time);
  if (day === undefined || clock === undefined) throw new Error(`${date} ${time}`);
  return zonedStart(day, clock, zone);
}

function localClock(moment: Temporal.ZonedDateTime): string {
  return moment.toPlainDateTime().toString({ smallestUnit: "minute" });
}

test.each([
  ["Europe/London", "2026-03-29T01:00:00Z", "2026-03-28"],
  ["Europe/London", "2026-10-25T01:00:00Z", "2026-10-24"],
  ["Europe/London", "2027-03-28T01:00:00Z", "2027-03-27"],
  ["Europe/London", "2027-10-31T01:00:00Z", "2027-10-30"],
  ["America/New_York", "2026-03-08T07:00:00Z", "2026-03-07"],
  ["America/New_York", "2026-11-01T06:00:00Z", "2026-10-31"],
  ["America/New_York", "2027-03-14T07:00:00Z", "2027-03-13"],
  ["America/New_York", "2027-11-07T06:00:00Z", "2027-11-06"],
  ["America/Chicago", "2026-03-08T08:00:00Z", "2026-03-07"],
  ["America/Chicago", "2026-11-01T07:00:00Z", "2026-10-31"],
])("the clocks of %s change at %s", (zone, instant, eve) => {
  const change = start(eve, "12:00", zone).getTimeZoneTransition("next");
  expect(change?.toInstant().toString()).toBe(instant);
});

test("a class at 18:00 in London on the Sunday the clocks go forward is at 17:00 UTC", () => {
  expect(start("2026-03-29", "18:00", "Europe/London").toInstant().toString()).toBe("2026-03-29T17:00:00Z");
});

test("over the spring change 24 hours before is an hour earlier by the clock, one day before is not", () => {
  const sunday = start("2026-03-29", "18:00", "Europe/London");
  expect(localClock(beforeStart(sunday, { hours: 24 }))).toBe("2026-03-28T17:00");
  expect(localClock(beforeStart(sunday, { days: 1 }))).toBe("2026-03-28T18:00");
});

test("over the autumn change 24 hours before is an hour later by the clock", () => {
  const sunday = start("2026-10-25", "18:00", "Europe/London");
  expect(localClock(beforeStart(sunday, { hours: 24 }))).toBe("2026-10-24T19:00");
  expect(localClock(beforeStart(sunday, { days: 1 }))).toBe("2026-10-24T18:00");
});

const CHANGES = {
  "Europe/London": [
    ["2024-03-31", "2024-10-27"],
    ["2025-03-30", "2025-10-26"],
    ["2026-03-29", "2026-10-25"],
    ["2027-03-28", "2027-10-31"],
    ["2028-03-26", "2028-10-29"],
    ["2029-03-25", "2029-10-28"],
    ["2030-03-31", "2030-10-27"],
  ],
  "America/Chicago": [
    ["2024-03-10", "2024-11-03"],
    ["2025-03-09", "2025-11-02"],
    ["2026-03-08", "2026-11-01"],
    ["2027-03-14", "2027-11-07"],
    ["2028-03-12", "2028-11-05"],
    ["2029-03-11", "2029-11-04"],
    ["2030-03-10", "2030-11-03"],
  ],
} as const;

const day = (text: string): Temporal.PlainDate => Temporal.PlainDate.from(text);

test.each(Object.entries(CHANGES))(
  "the clocks of %s change twice in each year, by an hour",
  (zone, years) => {
    const found = clockChanges(day("2024-01-01"), day("2030-12-31"), zone);
    expect(found.map(({ date }) => String(date))).toEqual(years.flat());
    expect(found.map(({ minutes }) => minutes)).toEqual(years.flatMap(() => [60, -60]));
  },
);

test.each([
  ["2026-03-29", "01:30", "Europe/London", "never", "2026-03-29T01:30:00Z"],
  ["2026-03-29", "00:59", "Europe/London", "once", "2026-03-29T00:59:00Z"],
  ["2026-03-29", "02:00", "Europe/London", "once", "2026-03-29T01:00:00Z"],
  ["2026-10-25", "01:30", "Europe/London", "twice", "2026-10-25T00:30:00Z"],
  ["2026-10-25", "02:00", "Europe/London", "once", "2026-10-25T02:00:00Z"],
  ["2026-03-08", "02:30", "America/Chicago", "never", "2026-03-08T08:30:00Z"],
  ["2026-11-01", "01:30", "America/Chicago", "twice", "2026-11-01T06:30:00Z"],
])("on %s at %s the clocks of %s show it %s", (date, time, zone, shown, instant) => {
  const read = clockOn(day(date), Temporal.PlainTime.from(time), zone);
  expect([read.shown, read.start.toInstant().toString()]).toEqual([shown, instant]);
});
