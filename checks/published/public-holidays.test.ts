// Public holidays against lists published by governments.
// England and Wales 2026 and 2027, Scotland 2026: the government's own file (gov.uk, bank holidays, read there).
// England and Wales 2025 and 2028, Northern Ireland 2025: from memory of the same list. The world cup day of Scotland
// in 2026 is on it as read.
// United States, federal, 2025 to 2028: U.S. Office of Personnel Management, "Federal Holidays", from memory.
// Illinois 2020: Department of Central Management Services, "State Holidays" (its page for 2019 and 2020), dates as
// they stand there.
import { publicHolidays, type Region } from "#core/year";
import { Temporal } from "temporal-polyfill";
import { expect, test } from "vitest";

/** What an official list has: the days kept, without the weekend days that they stand for. */
function listed(region: Region, year: number): readonly string[] {
  const first = Temporal.PlainDate.from({ year, month: 1, day: 1 });
  const all = publicHolidays(region, first, first.add({ years: 1 }).subtract({ days: 1 }));
  return all.filter(({ movedTo }) => movedTo === undefined).map(({ date }) => date.toString().slice(5));
}

test.each<readonly [Region, number, string]>([
  ["GB-ENG", 2025, "01-01 04-18 04-21 05-05 05-26 08-25 12-25 12-26"],
  ["GB-ENG", 2026, "01-01 04-03 04-06 05-04 05-25 08-31 12-25 12-28"],
  ["GB-WLS", 2026, "01-01 04-03 04-06 05-04 05-25 08-31 12-25 12-28"],
  ["GB-ENG", 2027, "01-01 03-26 03-29 05-03 05-31 08-30 12-27 12-28"],
  ["GB-ENG", 2028, "01-03 04-14 04-17 05-01 05-29 08-28 12-25 12-26"],
  ["GB-SCT", 2026, "01-01 01-02 04-03 05-04 05-25 06-15 08-03 11-30 12-25 12-28"],
  ["GB-NIR", 2025, "01-01 03-17 04-18 04-21 05-05 05-26 07-14 08-25 12-25 12-26"],
  // two holidays in a row at a weekend, and the years of the jubilee, the funeral and the coronation
  ["GB-SCT", 2022, "01-03 01-04 04-15 05-02 06-02 06-03 08-01 09-19 11-30 12-26 12-27"],
  ["GB-ENG", 2023, "01-02 04-07 04-10 05-01 05-08 05-29 08-28 12-25 12-26"],
  ["GB-ENG", 2020, "01-01 04-10 04-13 05-08 05-25 08-31 12-25 12-28"],
  ["US", 2025, "01-01 01-20 02-17 05-26 06-19 07-04 09-01 10-13 11-11 11-27 12-25"],
  ["US", 2026, "01-01 01-19 02-16 05-25 06-19 07-03 09-07 10-12 11-11 11-26 12-25"],
  // 1 January 2028 is a Saturday, kept on 31 December 2027
  ["US", 2027, "01-01 01-18 02-15 05-31 06-18 07-05 09-06 10-11 11-11 11-25 12-24 12-31"],
  ["US", 2028, "01-17 02-21 05-29 06-19 07-04 09-04 10-09 11-10 11-23 12-25"],
  ["US-IL", 2020, "01-01 01-20 02-12 02-17 05-25 07-03 09-07 10-12 11-03 11-11 11-26 11-27 12-25"],
])("%s in %i keeps its published days", (region, year, days) => {
  expect(listed(region, year)).toEqual(days.split(" "));
});

test("no election day is a holiday of Illinois in an odd year", () => {
  expect(listed("US-IL", 2027)).not.toContain("11-02");
});

const day = (text: string): Temporal.PlainDate => Temporal.PlainDate.from(text);

const told = (region: Region, from: string, until: string): readonly string[] =>
  publicHolidays(region, day(from), day(until)).map(
    ({ date, name, standsFor, movedTo }) =>
      `${String(date)} ${name}${standsFor === undefined ? "" : ` for ${String(standsFor)}`}${movedTo === undefined ? "" : ` kept ${String(movedTo)}`}`,
  );

test("a holiday at a weekend is told on both days", () => {
  expect(told("GB-ENG", "2027-12-20", "2027-12-31")).toEqual([
    "2027-12-25 Christmas Day kept 2027-12-27",
    "2027-12-26 Boxing Day kept 2027-12-28",
    "2027-12-27 Christmas Day for 2027-12-25",
    "2027-12-28 Boxing Day for 2027-12-26",
  ]);
  expect(told("US-IL", "2026-07-01", "2026-07-31")).toEqual([
    "2026-07-03 Independence Day for 2026-07-04",
    "2026-07-04 Independence Day kept 2026-07-03",
  ]);
});
