import type { PersonState } from "#core/roll";
import { type Locale, word } from "#core/words";

/** How often a place was given up too late, in plain words; a count of what happened and no mark of anybody. */
export function lateWords({ times, waived }: PersonState["late"], locale: Locale): string {
  const place = word("place", locale);
  if (times === 0) return `Never gave a ${place} up too late.`;
  const main = `Gave a ${place} up too late ${timesWords(times)}`;
  if (waived === 0) return `${main}.`;
  if (waived === times) return `${main}, and nothing was charged.`;
  return `${main}; ${waived} of them ${waived === 1 ? "was" : "were"} let go.`;
}

function timesWords(times: number): string {
  if (times === 1) return "once";
  return times === 2 ? "twice" : `${times} times`;
}
