import type { Temporal } from "temporal-polyfill";

/** The week of a date as "2026-W53": it begins on Monday and belongs to the year of its Thursday (ISO 8601). */
export function isoWeek(date: Temporal.PlainDate): string {
  const { yearOfWeek, weekOfYear } = date;
  if (yearOfWeek === undefined || weekOfYear === undefined)
    throw new RangeError(`no ISO date: ${String(date)}`);
  return `${yearOfWeek}-W${String(weekOfYear).padStart(2, "0")}`;
}
