import { readPlainDate } from "#kernels/calendar";
import type { ClassDocument } from "./class-document.ts";
import { teachingDates } from "./teaching-dates.ts";

/**
 * The date of the next session to write down: the first teaching date after the last one recorded; while nothing is
 * recorded, the last one that is over, or the first of all. Where the year has none it is a week after the last
 * session, or today. ISO dates; throws when `today` is none.
 */
export function nextSession(
  document: Pick<ClassDocument, "weekday" | "year">,
  recorded: readonly string[],
  today: string,
): string {
  if (readPlainDate(today) === undefined) throw new RangeError(`not a date: ${today}`);
  const teaching = teachingDates(document);
  const last = recorded.toSorted().at(-1);
  if (last === undefined) return teaching.findLast((date) => date <= today) ?? teaching[0] ?? today;
  const next = teaching.find((date) => date > last);
  return next ?? readPlainDate(last)?.add({ days: 7 }).toString() ?? today;
}
