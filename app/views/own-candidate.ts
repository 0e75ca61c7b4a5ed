import {
  type ClassDocument,
  classYear,
  guessesBehind,
  hireOf,
  onlyNeeded,
  sessionsInYear,
} from "#core/class";
import type { HallDocument } from "#core/hall";
import { type CurrencyCode, type Minor, minor, readAmount, roundToMinor } from "#core/words";
import { hireKnown } from "./hire-known.ts";
import { type Missing, missing, type Unsound, unsound } from "./sheet-part.ts";

/** What a class of the practice brings to a week, from its class sheet. */
export type OwnFigures = {
  readonly kind: "ready";
  /** what a session leaves on average over its year, before travel and before fixed costs, her own time not counted */
  readonly contribution: Minor;
  /** in its first twelve months */
  readonly sessions: number;
  /** how many guesses of its class sheet that rests on */
  readonly guesses: number;
};

/**
 * A class as something that could be taught in a week. Travel is taken out of it, because the way of the day decides
 * what it costs, and so are fixed costs, which stay when the class goes.
 */
export function ownCandidate(
  document: ClassDocument,
  hall: HallDocument | null,
  currency: CurrencyCode,
): OwnFigures | Missing | Unsound {
  const known = hireKnown({ hall });
  if (known.kind === "missing") return known;
  const hire = hireOf(known.hall, currency);
  if (!hire.ok) return unsound(hire.problems);
  const year = classYear(onlyNeeded(document, "year", currency, document.year.from), hire.value, currency);
  if (!year.ok) return unsound(year.problems);
  const travel = readAmount(document.costs.travel, currency, "costs.travel");
  if (!travel.ok) return unsound(travel.problems);
  const { length } = year.value.dates;
  const sessions = sessionsInYear(document, currency);
  if (length === 0 || sessions === null || sessions === 0)
    return missing("It has no session in its year.", "Look at its dates and closures on its class sheet.");
  return {
    kind: "ready",
    contribution: minor(roundToMinor(year.value.contribution.div(length).add(travel.value))),
    sessions,
    guesses: guessesBehind(document, "year").length,
  };
}
