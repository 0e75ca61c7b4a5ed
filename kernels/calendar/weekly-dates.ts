import type { Temporal } from "temporal-polyfill";
import { weeklyRecurrence } from "./weekly-recurrence.ts";

/** Every date of one weekday, 1 is Monday, from a date until another, both included. */
export function weeklyDates(
  from: Temporal.PlainDate,
  until: Temporal.PlainDate,
  weekday: number,
): readonly Temporal.PlainDate[] {
  if (!Number.isInteger(weekday) || weekday < 1 || weekday > 7) throw new RangeError(`weekday: ${weekday}`);
  return weeklyRecurrence({ start: from, interval: 1, weekdays: [weekday], weekStart: 1, end: { until } });
}
