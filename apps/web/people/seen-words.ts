import type { SeenAnswer } from "#app/ports";
import type { Locale } from "#core/words";
import { dateWords } from "../words/dates.ts";
import { weeksBetween } from "./today-here.ts";

/** Weeks of the record that are looked through: a year. */
export const SEEN_WEEKS = 52;

/** From so many weeks on it is said for how long somebody was not seen; before, only the date. */
const WORTH_SAYING = 3;

/** "Last came on Tuesday 3 November 2026: not seen for 5 weeks." A fact in words; nobody is ranked by it. */
export function seenWords(
  seen: SeenAnswer["seen"][number] | undefined,
  today: string,
  locale: Locale,
): string {
  if (seen === undefined) return `Not at a session of the last ${SEEN_WEEKS} weeks.`;
  const last = `Last came on ${dateWords(seen.last, locale)}`;
  const weeks = weeksBetween(seen.last, today);
  return weeks < WORTH_SAYING ? `${last}.` : `${last}: not seen for ${weeks} weeks.`;
}
