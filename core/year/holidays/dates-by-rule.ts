import { Temporal } from "temporal-polyfill";

export function dayOf(year: number, month: number, day: number): Temporal.PlainDate {
  return Temporal.PlainDate.from({ year, month, day });
}

/** The nth of a weekday in a month, 1 is Monday: the third Monday of January 2027 is the 18th. */
export function nthWeekday(year: number, month: number, weekday: number, nth: number): Temporal.PlainDate {
  const first = dayOf(year, month, 1);
  return first.add({ days: ((weekday - first.dayOfWeek + 7) % 7) + 7 * (nth - 1) });
}

/** The last of a weekday in a month: the last Monday of May 2027 is the 31st. */
export function lastWeekday(year: number, month: number, weekday: number): Temporal.PlainDate {
  const last = dayOf(year, month, 1).add({ months: 1 }).subtract({ days: 1 });
  return last.subtract({ days: (last.dayOfWeek - weekday + 7) % 7 });
}

export function isWeekend(date: Temporal.PlainDate): boolean {
  return date.dayOfWeek > 5;
}
