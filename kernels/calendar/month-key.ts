import type { Temporal } from "temporal-polyfill";

/** The month of a date as "2027-01". */
export function monthKey(date: Temporal.PlainDate): string {
  return date.toPlainYearMonth().toString();
}
