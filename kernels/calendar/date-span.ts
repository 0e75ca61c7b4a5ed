import { Temporal } from "temporal-polyfill";

/** From a date until another, both included. */
export type DateSpan = { readonly from: Temporal.PlainDate; readonly until: Temporal.PlainDate };

/** The first of the spans in which the date lies; undefined when it lies in none. */
export function spanCovering<Span extends DateSpan>(
  spans: readonly Span[],
  date: Temporal.PlainDate,
): Span | undefined {
  return spans.find(({ from, until }) => isBetween(date, from, until));
}

function isBetween(date: Temporal.PlainDate, from: Temporal.PlainDate, until: Temporal.PlainDate): boolean {
  return Temporal.PlainDate.compare(from, date) <= 0 && Temporal.PlainDate.compare(date, until) <= 0;
}
