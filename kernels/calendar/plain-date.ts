import { Temporal } from "temporal-polyfill";

const WRITTEN = /^\d{4}-\d{2}-\d{2}$/;

/**
 * Reads "2027-02-28" as a date of the calendar; undefined for "2027-02-30", "28/02/2027" or "".
 * Only the plain form counts, so that a time or a zone behind the date is never dropped in silence.
 */
export function readPlainDate(text: string): Temporal.PlainDate | undefined {
  if (!WRITTEN.test(text)) return undefined;
  try {
    return Temporal.PlainDate.from(text, { overflow: "reject" });
  } catch {
    return undefined;
  }
}
