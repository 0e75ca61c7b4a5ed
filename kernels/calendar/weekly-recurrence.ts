import { Temporal } from "temporal-polyfill";

/**
 * Every second Tuesday and Thursday, eight times, from Tuesday 2 September 1997:
 * { start, interval: 2, weekdays: [2, 4], weekStart: 7, end: { count: 8 } }.
 * The start counts only when it is one of the weekdays; RFC 5545 leaves the other case undefined.
 */
export type WeeklyRecurrence = {
  readonly start: Temporal.PlainDate;
  /** 1 is every week */
  readonly interval: number;
  /** ISO weekdays, 1 is Monday; the start's own when empty */
  readonly weekdays: readonly number[];
  /** the day on which a week begins, which matters only when weeks are skipped */
  readonly weekStart: number;
  readonly end: { readonly count: number } | { readonly until: Temporal.PlainDate };
};

// Nothing repeats weekly for longer than a century; a wider span is a slip.
const MOST_WEEKS = 5300;

/** The dates of a weekly rule as RFC 5545, 3.3.10 and 3.8.5.3, in order; `until` is included. */
export function weeklyRecurrence(rule: WeeklyRecurrence): readonly Temporal.PlainDate[] {
  if (!Number.isInteger(rule.interval) || rule.interval < 1)
    throw new RangeError(`interval: ${rule.interval}`);
  const offsets = dayOffsets(rule);
  const dates: Temporal.PlainDate[] = [];
  let week = weekBegin(rule.start, rule.weekStart);
  for (let step = 0; step < MOST_WEEKS; step += 1) {
    for (const offset of offsets) {
      const date = week.add({ days: offset });
      if (Temporal.PlainDate.compare(date, rule.start) < 0) continue;
      if (ended(rule, date, dates.length)) return dates;
      dates.push(date);
    }
    week = week.add({ weeks: rule.interval });
  }
  throw new RangeError(`a weekly rule runs for more than ${MOST_WEEKS} weeks`);
}

/** Days from the beginning of a week to each of the rule's weekdays, in the order in which they come. */
function dayOffsets({ start, weekdays, weekStart }: WeeklyRecurrence): readonly number[] {
  const days = weekdays.length === 0 ? [start.dayOfWeek] : [...new Set(weekdays)];
  return days.map((day) => (day - weekStart + 7) % 7).sort((a, b) => a - b);
}

function weekBegin(date: Temporal.PlainDate, weekStart: number): Temporal.PlainDate {
  return date.subtract({ days: (date.dayOfWeek - weekStart + 7) % 7 });
}

function ended(rule: WeeklyRecurrence, date: Temporal.PlainDate, found: number): boolean {
  const { end } = rule;
  return "count" in end ? found >= end.count : Temporal.PlainDate.compare(date, end.until) > 0;
}
