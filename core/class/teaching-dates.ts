import { currencyCodes } from "#core/words";
import { classDates } from "./class-dates.ts";
import type { ClassDocument } from "./class-document.ts";
import { readWeekday } from "./read-class-fields.ts";
import { readClassYear } from "./read-class-year.ts";

/** The dates on which the class runs, ISO, in order; none while its weekday or its year is unsound. */
export function teachingDates({ weekday, year }: Pick<ClassDocument, "weekday" | "year">): readonly string[] {
  const [currency] = currencyCodes();
  // what the year costs is not asked for its dates
  const read = currency === undefined ? null : readClassYear({ ...year, fixedPerYear: "0" }, currency);
  if (read === null || !read.ok || !readWeekday(weekday).ok) return [];
  return classDates({ weekday, ...read.value }).teaching.map(String);
}
