// Clock changes of Europe/London, America/New_York and America/Chicago in 2026 and 2027, from the zone rules (IANA time
// zone database, files europe and northamerica, rules EU and US), read there; the local times beside
// them are worked out from those rules by hand.
import { beforeStart, readPlainDate, readPlainTime, zonedStart } from "#kernels/calendar";
import type { Temporal } from "temporal-polyfill";
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
