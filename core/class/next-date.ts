import { readPlainDate } from "#kernels/calendar";
import type { ClassDates } from "./class-dates.ts";

/**
 * The next date on which the class runs, from `today` on; the last one when its year is over; `today`
 * itself when it runs on no date at all. ISO dates; throws when `today` is none.
 */
export function nextDate({ teaching }: Pick<ClassDates, "teaching">, today: string): string {
  if (readPlainDate(today) === undefined) throw new RangeError(`not a date: ${today}`);
  const dates = teaching.map(String);
  return dates.find((date) => date >= today) ?? dates.at(-1) ?? today;
}
