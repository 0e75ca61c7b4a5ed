import { ruleStarts, weeklyDates } from "#kernels/calendar";
import { Temporal } from "temporal-polyfill";
import type { Year, YearClass } from "./year-types.ts";

/** Every date on which the class would be if nothing took one, from the first day of the year to its last. */
export function classDays(one: YearClass, { span }: Pick<Year, "span">): readonly Temporal.PlainDate[] {
  const from = later(one.span.from, span.from);
  const until = earlier(one.span.until, span.until);
  if (Temporal.PlainDate.compare(until, from) < 0) return [];
  if (one.repeats.kind === "weekly") return weeklyDates(from, until, one.repeats.weekday);
  // dates alone are asked for: in a zone whose clocks never change none is left out for its time
  const first = one.span.from.toPlainDateTime(one.start).toZonedDateTime("UTC");
  const end = until.add({ days: 1 }).toZonedDateTime("UTC");
  const read = ruleStarts({ rule: one.repeats.rule, start: first }, from.toZonedDateTime("UTC"), end);
  if (read.kind !== "starts") throw new RangeError(`rule: ${one.repeats.rule}`);
  return read.starts.map((it) => it.toPlainDate());
}

function later(a: Temporal.PlainDate, b: Temporal.PlainDate): Temporal.PlainDate {
  return Temporal.PlainDate.compare(a, b) < 0 ? b : a;
}

function earlier(a: Temporal.PlainDate, b: Temporal.PlainDate): Temporal.PlainDate {
  return Temporal.PlainDate.compare(a, b) < 0 ? a : b;
}
