import { Temporal } from "temporal-polyfill";
import { dayOf, lastWeekday, nthWeekday } from "./dates-by-rule.ts";
import type { PublicHoliday, Region } from "./public-holiday.ts";

export type AmericanRegion = Extract<Region, `US${string}`>;

/**
 * The federal holidays of the United States in a year (5 U.S.C. 6103), with those that the state of Illinois keeps
 * besides for "US-IL": Lincoln’s birthday, the general election of even years, the day after Thanksgiving. A holiday
 * on a Saturday is kept on the Friday before, one on a Sunday on the Monday after. The Friday before a Saturday
 * 1 January belongs to the year in which it lies.
 */
export function holidaysUs(region: AmericanRegion, year: number): readonly PublicHoliday[] {
  // a New Year’s Day on a Saturday is kept in the year before it
  const next = { date: dayOf(year + 1, 1, 1), name: "New Year’s Day" };
  return [...standingHolidays(region, year), next]
    .flatMap(withObserved)
    .filter(({ date }) => date.year === year)
    .toSorted((a, b) => Temporal.PlainDate.compare(a.date, b.date));
}

type Named = { readonly date: Temporal.PlainDate; readonly name: string };

function standingHolidays(region: AmericanRegion, year: number): readonly Named[] {
  const thanksgiving = nthWeekday(year, 11, 4, 4);
  return [
    { date: dayOf(year, 1, 1), name: "New Year’s Day" },
    { date: nthWeekday(year, 1, 1, 3), name: "Martin Luther King Jr. Day" },
    { date: nthWeekday(year, 2, 1, 3), name: "Washington’s Birthday" },
    { date: lastWeekday(year, 5, 1), name: "Memorial Day" },
    // a federal holiday since 17 June 2021
    ...(year >= 2021 ? [{ date: dayOf(year, 6, 19), name: "Juneteenth" }] : []),
    { date: dayOf(year, 7, 4), name: "Independence Day" },
    { date: nthWeekday(year, 9, 1, 1), name: "Labor Day" },
    { date: nthWeekday(year, 10, 1, 2), name: "Columbus Day" },
    { date: dayOf(year, 11, 11), name: "Veterans Day" },
    { date: thanksgiving, name: "Thanksgiving Day" },
    { date: dayOf(year, 12, 25), name: "Christmas Day" },
    ...(region === "US-IL" ? ofIllinois(year, thanksgiving) : []),
  ];
}

function ofIllinois(year: number, thanksgiving: Temporal.PlainDate): readonly Named[] {
  const election = nthWeekday(year, 11, 1, 1).add({ days: 1 });
  return [
    { date: dayOf(year, 2, 12), name: "Lincoln’s Birthday" },
    ...(year % 2 === 0 ? [{ date: election, name: "General Election Day" }] : []),
    { date: thanksgiving.add({ days: 1 }), name: "Day after Thanksgiving" },
  ];
}

const SATURDAY = 6;
const SUNDAY = 7;

/** 4 July 2026 is a Saturday and kept on Friday the 3rd. */
function withObserved({ date, name }: Named): readonly PublicHoliday[] {
  if (date.dayOfWeek !== SATURDAY && date.dayOfWeek !== SUNDAY) return [{ date, name }];
  const observed = date.add({ days: date.dayOfWeek === SATURDAY ? -1 : 1 });
  return [
    { date, name, movedTo: observed },
    { date: observed, name, standsFor: date },
  ];
}
