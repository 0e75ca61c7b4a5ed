import { readExact, type Result } from "#core/words";
import type { Fraction } from "fraction.js";

// A hall that charges more than ten times its own rate is a slip of the keyboard: 15 for 1.5.
const MOST = 10;

/** A factor on the rate, 0 to 10. Problem: "hire-factor-absurd". */
export function readHireFactor(value: number, place: string): Result<Fraction> {
  return readExact(
    value,
    place,
    { least: 0, most: MOST },
    {
      code: "hire-factor-absurd",
      says: `A hall does not charge ${value} times its rate.`,
      next: `Give a factor from 0 to ${MOST}: 1 is unchanged, 0.5 is half.`,
    },
  );
}
