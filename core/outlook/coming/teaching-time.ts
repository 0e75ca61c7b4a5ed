import { weekdayOfDay } from "#kernels/calendar";

/** Time that runs in teaching weeks: Monday to Sunday, those left out in which the class did not run. */
export type TeachingTime = {
  /** teaching weeks since some beginning, with the part of a week: Wednesday is 2/7 after Monday */
  readonly at: (day: number) => number;
  /** the number of the day's week, counting only weeks in which the class ran */
  readonly weekOf: (day: number) => number;
};

/** Days from one to another, both included, numbered from 1970-01-01. */
export type DaySpan = { readonly from: number; readonly until: number };

/**
 * A week is left out when it touches a closed span and nobody came in it: a closure from Monday to Friday takes
 * a Tuesday class away, and a day that somebody came to was not closed. With `emptyWeeks` every week without
 * anybody, from the first visit until the end, is left out.
 */
export function teachingTime(
  daysSeen: ReadonlySet<number>,
  closed: readonly DaySpan[],
  emptyWeeks: DaySpan | null = null,
): TeachingTime {
  const ran = new Set([...daysSeen].map(calendarWeek));
  const touched = emptyWeeks === null ? closed : [...closed, emptyWeeks];
  const out = new Set(touched.flatMap(weeksOf).filter((week) => !ran.has(week)));
  const sorted = [...out].sort((a, b) => a - b);
  const weekOf = (day: number): number => calendarWeek(day) - countBelow(sorted, calendarWeek(day));
  // a day in a week left out is the Monday after it
  const at = (day: number): number =>
    weekOf(day) + (out.has(calendarWeek(day)) ? 0 : (weekdayOfDay(day) - 1) / 7);
  return { at, weekOf };
}

/** Monday to Sunday; 1 January 1970 was a Thursday. */
export function calendarWeek(day: number): number {
  return Math.floor((day + 3) / 7);
}

function weeksOf({ from, until }: DaySpan): readonly number[] {
  const first = calendarWeek(from);
  return Array.from({ length: calendarWeek(until) - first + 1 }, (_, index) => first + index);
}

function countBelow(sorted: readonly number[], value: number): number {
  let low = 0;
  let high = sorted.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((sorted[middle] ?? 0) < value) low = middle + 1;
    else high = middle;
  }
  return low;
}
