import { readPlainDate } from "#kernels/calendar";
import { Temporal } from "temporal-polyfill";
import type { ListContext } from "./day-list-types.ts";
import type { WrittenDate } from "./find-dates.ts";
import { monthName, weekdayName } from "./words-of-dates.ts";

/** The date that was written, its year filled in from the year that is planned; or why there is none. */
export function dateOfWritten(written: WrittenDate, context: ListContext): Temporal.PlainDate | string {
  const { day, month = 0, weekday } = written;
  if (month < 1 || month > 12) return `there is no month ${month}; ${orderWords(context)}.`;
  const date = written.year === undefined ? inPlannedYear(written, context) : dateIn(written.year, written);
  if (date === undefined) return `${day} ${monthName(month)} is no date ${whereWords(written, context)}.`;
  if (weekday === undefined || date.dayOfWeek === weekday) return date;
  return `${day} ${monthName(month)} ${date.year} is a ${weekdayName(date.dayOfWeek)}, not a ${weekdayName(weekday)}.`;
}

function dateIn(year: number, written: WrittenDate): Temporal.PlainDate | undefined {
  return readPlainDate(isoText(year, written));
}

/** The day and month that were written, in a year, as "2026-10-26"; it need not be a date. */
export function isoText(year: number, { day, month = 0 }: WrittenDate): string {
  return [String(year).padStart(4, "0"), ...[month, day].map((it) => String(it).padStart(2, "0"))].join("-");
}

/** A year from August on has two Augusts at most; the weekday beside the date may tell which, else the first is meant. */
function inPlannedYear(written: WrittenDate, { from, until }: ListContext): Temporal.PlainDate | undefined {
  const years = Array.from({ length: until.year - from.year + 1 }, (_, at) => from.year + at);
  const dates = years.flatMap((year) => dateIn(year, written) ?? []);
  const inside = dates.filter(
    (date) => Temporal.PlainDate.compare(from, date) <= 0 && Temporal.PlainDate.compare(date, until) <= 0,
  );
  return inside.find((date) => date.dayOfWeek === written.weekday) ?? inside[0];
}

function orderWords({ locale }: ListContext): string {
  return locale === "en-US" ? "the month is read first, 10/26/2026" : "the day is read first, 26/10/2026";
}

function whereWords({ year }: WrittenDate, { from, until }: ListContext): string {
  return year === undefined
    ? `between ${String(from)} and ${String(until)}; write the year beside it`
    : `of ${year}`;
}
