import type { Fraction } from "fraction.js";
import { exactNumber } from "./exact-number.ts";
import { bad, good, problem, type Result } from "./problem.ts";
import { type Minutes, minutes } from "./units.ts";

export type Range = { readonly least: number; readonly most: number };

const A_DAY: Range = { least: 0, most: 1440 };

/** Whole minutes, a day at most unless said otherwise. Problems: "minutes-not-whole", "minutes-out-of-range". */
export function readMinutes(value: number, place: string, range: Range = A_DAY): Result<Minutes> {
  if (!Number.isFinite(value) || value < range.least || value > range.most) {
    const next = `Give whole minutes from ${range.least} to ${range.most}.`;
    return bad(problem("minutes-out-of-range", place, `${value} minutes cannot be meant.`, next));
  }
  if (!Number.isInteger(value)) {
    return bad(
      problem("minutes-not-whole", place, `${value} is not a whole number of minutes.`, "Round it."),
    );
  }
  return good(minutes(value));
}

/** A plain number as an exact one. `says` and `next` are the words when it is out of its range. */
export function readExact(
  value: number,
  place: string,
  range: Range,
  otherwise: { readonly code: string; readonly says: string; readonly next: string },
): Result<Fraction> {
  if (!Number.isFinite(value) || value < range.least || value > range.most) {
    return bad(problem(otherwise.code, place, otherwise.says, otherwise.next));
  }
  return good(exactNumber(value));
}
