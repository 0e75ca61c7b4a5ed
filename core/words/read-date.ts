import { readPlainDate } from "#kernels/calendar";
import type { Temporal } from "temporal-polyfill";
import { bad, good, problem, type Result } from "./problem.ts";

/** Reads "2027-02-28". Problem: "date-unreadable", also for a day that the month does not have. */
export function readDate(text: string, place: string): Result<Temporal.PlainDate> {
  const date = readPlainDate(text);
  if (date !== undefined) return good(date);
  const next = "Write year, month and day like 2027-02-28.";
  return bad(
    problem("date-unreadable", place, `“${text.slice(0, 40)}” is not a date of the calendar.`, next),
  );
}
