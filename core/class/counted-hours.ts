import type { HallDocument } from "#core/hall";
import type { CurrencyCode } from "#core/words";
import type { Fraction } from "fraction.js";
import { firstYear } from "./class-dates.ts";
import type { ClassDocument } from "./class-document.ts";
import { classHours } from "./class-hours.ts";
import { hireOf, soundClass } from "./evening-of.ts";
import { onlyNeeded } from "./only-needed.ts";

export type CountedHours = { readonly hours: Fraction; readonly sessions: number };

/**
 * The hours a year by which a volume band was chosen when the terms do not state them: 76 hours on 38
 * evenings. Null when they are stated, when there are no bands, or while something is unsound.
 */
export function countedHours(
  document: ClassDocument,
  hall: HallDocument,
  currency: CurrencyCode,
  today: string,
): CountedHours | null {
  const hire = hireOf(hall, currency);
  if (!hire.ok) return null;
  const sound = soundClass(onlyNeeded(document, "evening cost", currency, today), hire.value, currency);
  if (!sound.ok) return null;
  const { parts, terms, dates } = sound.value;
  if (terms.hoursPerYear !== null || terms.bands.length === 0) return null;
  return { hours: classHours(parts, terms, dates), sessions: firstYear(parts, dates).length };
}
