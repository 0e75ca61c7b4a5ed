import type { CurrencyCode } from "#core/words";
import { classDates, firstYear } from "./class-dates.ts";
import type { ClassDocument } from "./class-document.ts";
import { readWeekday } from "./read-class-fields.ts";
import { readClassYear } from "./read-class-year.ts";

/** The sessions of the class's first twelve months; null while its weekday or its year is unsound. */
export function sessionsInYear(
  { weekday, year }: Pick<ClassDocument, "weekday" | "year">,
  currency: CurrencyCode,
): number | null {
  const read = readClassYear(year, currency);
  if (!read.ok || !readWeekday(weekday).ok) return null;
  const running = { weekday, ...read.value };
  return firstYear(running, classDates(running)).length;
}
