import { Temporal } from "temporal-polyfill";
import { holidaysGb } from "./holidays-gb.ts";
import { holidaysUs } from "./holidays-us.ts";
import type { PublicHoliday, Region } from "./public-holiday.ts";

/**
 * The public holidays of a region from one date until another, both included, in order. Worked out by the rules that
 * stand in the law, with no list and no network; a holiday proclaimed once is known only where it is written here.
 */
export function publicHolidays(
  region: Region,
  from: Temporal.PlainDate,
  until: Temporal.PlainDate,
): readonly PublicHoliday[] {
  const years = Array.from({ length: Math.max(0, until.year - from.year + 1) }, (_, at) => from.year + at);
  return years
    .flatMap((year) => ofYear(region, year))
    .filter(({ date }) => Temporal.PlainDate.compare(from, date) <= 0)
    .filter(({ date }) => Temporal.PlainDate.compare(date, until) <= 0);
}

function ofYear(region: Region, year: number): readonly PublicHoliday[] {
  switch (region) {
    case "none":
      return [];
    case "US":
    case "US-IL":
      return holidaysUs(region, year);
    case "GB-ENG":
    case "GB-WLS":
    case "GB-SCT":
    case "GB-NIR":
      return holidaysGb(region, year);
  }
}
