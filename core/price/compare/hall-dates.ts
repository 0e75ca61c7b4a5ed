import { spanCovering, weeklyDates } from "#kernels/calendar";
import type { Temporal } from "temporal-polyfill";
import type { ComparedHall, Comparison, LostTo } from "./compare-types.ts";

export type HallDates = {
  readonly dates: readonly Temporal.PlainDate[];
  readonly lostTo: readonly LostTo[];
};

/** The dates of a weekday in the year on which the class can be in a hall, and what takes the others. */
export function hallDates(comparison: Comparison, hall: ComparedHall, weekday: number): HallDates {
  const all = weeklyDates(comparison.year.from, comparison.year.until, weekday).map((date) => ({
    date,
    why: takenBy(comparison, hall, date),
  }));
  const whys = all.flatMap(({ why }) => (why === null ? [] : [why]));
  return {
    dates: all.flatMap(({ date, why }) => (why === null ? [date] : [])),
    lostTo: [...new Set(whys)].map((why) => ({ why, dates: whys.filter((it) => it === why).length })),
  };
}

function takenBy({ closures }: Comparison, hall: ComparedHall, date: Temporal.PlainDate): string | null {
  const closed = spanCovering([...closures, ...hall.closures], date);
  if (closed !== undefined) return closed.why;
  const inTerm = hall.terms === null || spanCovering(hall.terms, date) !== undefined;
  return inTerm ? null : "days outside its terms";
}
