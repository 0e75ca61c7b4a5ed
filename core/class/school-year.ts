import type { Locale } from "#core/words";
import { easterSunday } from "#kernels/calendar";
import { Temporal } from "temporal-polyfill";
import type { ClassDocument } from "./class-document.ts";

type Year = Pick<ClassDocument["year"], "from" | "until" | "closures">;
type Closures = Year["closures"];

const JUNE = 6;

/**
 * The teaching year around a day: from the second week of September into July, with the breaks that
 * schools usually have there. Every date is a guess until she has the hall's and the county's own.
 */
export function schoolYear(today: Temporal.PlainDate, locale: Locale): Year {
  const first = today.month < JUNE ? today.year - 1 : today.year;
  const from = nthMonday(first, 9, 1).add({ weeks: 1 });
  const until = nthMonday(first + 1, 7, 3).add({ days: 6 });
  const closures = locale === "en-US" ? closuresUs(first) : closuresUk(first);
  return { from: from.toString(), until: until.toString(), closures };
}

/** Half-terms about the last week of October, the third of February and the last of May; two weeks each at Christmas and Easter. */
function closuresUk(first: number): Closures {
  const easter = easterSunday(first + 1);
  return [
    week(lastMonday(first, 10), "autumn half-term"),
    span(date(first, 12, 21), date(first + 1, 1, 3), "Christmas"),
    week(nthMonday(first + 1, 2, 3), "February half-term"),
    span(easter.subtract({ days: 6 }), easter.add({ days: 7 }), "Easter"),
    week(lastMonday(first + 1, 5), "May half-term"),
  ];
}

/** Thanksgiving is the fourth Thursday of November; spring break is different in every district. */
function closuresUs(first: number): Closures {
  return [
    week(firstWeekday(first, 11, 4).add({ weeks: 3 }).subtract({ days: 3 }), "Thanksgiving"),
    span(date(first, 12, 21), date(first + 1, 1, 3), "winter break"),
    week(nthMonday(first + 1, 3, 4), "spring break"),
    week(lastMonday(first + 1, 5), "Memorial Day week"),
  ];
}

function date(year: number, month: number, day: number): Temporal.PlainDate {
  return Temporal.PlainDate.from({ year, month, day });
}

function firstWeekday(year: number, month: number, weekday: number): Temporal.PlainDate {
  const first = date(year, month, 1);
  return first.add({ days: (weekday - first.dayOfWeek + 7) % 7 });
}

function nthMonday(year: number, month: number, nth: number): Temporal.PlainDate {
  return firstWeekday(year, month, 1).add({ weeks: nth - 1 });
}

function lastMonday(year: number, month: number): Temporal.PlainDate {
  const last = date(year, month, 1).add({ months: 1 }).subtract({ days: 1 });
  return last.subtract({ days: last.dayOfWeek - 1 });
}

function week(monday: Temporal.PlainDate, why: string): Closures[number] {
  return span(monday, monday.add({ days: 6 }), why);
}

function span(from: Temporal.PlainDate, until: Temporal.PlainDate, why: string): Closures[number] {
  return { from: from.toString(), until: until.toString(), why };
}
