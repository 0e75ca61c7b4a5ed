import { spanCovering, weeklyDates } from "#kernels/calendar";
import { Temporal } from "temporal-polyfill";
import type { ClassParts } from "./class-parts.ts";

export type ClassDates = {
  readonly teaching: readonly Temporal.PlainDate[];
  readonly lost: readonly { readonly date: Temporal.PlainDate; readonly why: string }[];
};

type Running = Pick<ClassParts, "year" | "weekday" | "closures">;

/** Every date of the class's weekday in its year: those on which it runs, and those that a closure takes. */
export function classDates({ year, weekday, closures }: Running): ClassDates {
  const all = weeklyDates(year.from, year.until, weekday).map((date) => ({
    date,
    why: spanCovering(closures, date)?.why,
  }));
  return {
    teaching: all.filter(({ why }) => why === undefined).map(({ date }) => date),
    lost: all.flatMap(({ date, why }) => (why === undefined ? [] : [{ date, why }])),
  };
}

/** The teaching dates of the first twelve months, by which a hall counts its hours a year. */
export function firstYear(parts: Running, dates: ClassDates): readonly Temporal.PlainDate[] {
  const end = parts.year.from.add({ years: 1 });
  return dates.teaching.filter((date) => Temporal.PlainDate.compare(date, end) < 0);
}
