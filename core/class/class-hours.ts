import { chargedSlot, type HireTerms } from "#core/hall";
import { Fraction } from "fraction.js";
import { type ClassDates, firstYear } from "./class-dates.ts";
import type { ClassParts } from "./class-parts.ts";

/**
 * Hours a year that this class hires the hall: charged minutes × sessions of its first twelve months.
 * 120 charged minutes on 38 dates are 76 hours. Her other hires there are not in it: state the hours in
 * the hire terms to have them counted.
 */
export function classHours(parts: ClassParts, terms: HireTerms, dates: ClassDates): Fraction {
  const { charged } = chargedSlot(terms, parts.minutes, parts.year.from);
  return new Fraction(charged * firstYear(parts, dates).length, 60);
}
