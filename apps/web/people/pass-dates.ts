import { type ClassDocument, teachingDates } from "#core/class";
import { lastOfEachWeek, type PassState, useByAfter } from "#core/books";
import { type Result, good, type WorkingLine } from "#core/words";
import type { Listed } from "../drafts/use-practice.ts";

export type Classes = readonly Listed<ClassDocument>[];

/**
 * The dates that count for a pass: those of the one class it is good for, closed ones left out; where it is good for
 * several, one for each week in which any of them runs.
 */
export function passDates(valid: PassState["valid"], classes: Classes, from = ""): readonly string[] {
  const good = validClasses(valid, classes);
  const dates = good.flatMap(({ document }) => teachingDates(document)).filter((date) => date >= from);
  return good.length > 1 ? lastOfEachWeek(dates) : [...new Set(dates)].sort();
}

export function validClasses(valid: PassState["valid"], classes: Classes): Classes {
  return valid === "all" ? classes : classes.filter(({ id }) => valid.includes(id));
}

export type UseByFound = { readonly date: string; readonly working: readonly WorkingLine[] };

/**
 * The use-by of a pass that is sold on a day and runs for so many teaching weeks, with the sum.
 * Problem: "use-by-no-dates" where no date of its classes is planned at all.
 */
export function useByFound(
  {
    dates,
    weeks,
    sold,
  }: { readonly dates: readonly string[]; readonly weeks: number; readonly sold: string },
  day: (date: string) => string,
): Result<UseByFound> {
  const found = useByAfter(dates, weeks);
  if (!found.ok) return found;
  const { date, guessed } = found.value;
  const first = dates[0];
  return good({
    date,
    working: [
      { label: "Sold", sum: "", amount: day(sold) },
      ...(first === undefined ? [] : [{ label: "First date that counts", sum: "", amount: day(first) }]),
      { label: "Teaching weeks", sum: "closed dates left out", amount: String(weeks) },
      ...(guessed === 0
        ? []
        : [{ label: "Of these beyond the dates that are planned", sum: "a guess", amount: String(guessed) }]),
      { label: `Teaching date ${weeks}`, sum: "the last day of the pass", amount: day(date), total: true },
    ],
  });
}
