import type { ExactMinor, Minor } from "#core/words";
import { Fraction } from "fraction.js";

/**
 * A pass that is still good: 85.00 paid for 10 classes, 4 of them left. Several of one kind stand together: 3 such
 * passes with 17 classes left over all of them.
 */
export type LivePass = {
  readonly price: Minor;
  readonly classes: number;
  readonly left: number;
  /** 1 unless told */
  readonly passes?: number;
};

/**
 * What she still owes on live passes: Σ price × left ÷ classes, exact, in minor units. A debt in classes;
 * leftovers become income only when the pass runs out, on a line of their own. Method: trade F7.
 */
export function owedClasses(passes: readonly LivePass[]): {
  readonly classes: number;
  readonly amount: ExactMinor;
} {
  return {
    classes: passes.reduce((sum, { left }) => sum + left, 0),
    amount: passes.reduce((sum, pass) => sum.add(owedOn(pass)), new Fraction(0)),
  };
}

export function owedOn({ price, classes, left, passes = 1 }: LivePass): ExactMinor {
  if (!Number.isInteger(left) || left < 0 || left > classes * passes)
    throw new RangeError(`left: ${left} of ${classes * passes}`);
  return new Fraction(price).mul(left).div(classes);
}

/** What attendance has earned so far: price ÷ classes for each class taken. The books use this one. */
export function earnedOn(pass: LivePass): ExactMinor {
  return new Fraction(pass.price).mul(pass.passes ?? 1).sub(owedOn(pass));
}

/**
 * For comparison only: income taken in proportion to the use that is expected at all, as the revenue standards
 * do with rights that part of the holders never use (IFRS 15 B44 to B47, ASC 606-10-55-46 to 49). 9,000 for
 * rights of which 9,700 will be used, 4,500 so far: 9,000 × 4,500 ÷ 9,700 = 4,175.26.
 */
export function earnedInProportion(price: Fraction | number, used: number, expectedUsed: number): Fraction {
  if (!(expectedUsed > 0)) throw new RangeError(`expected use: ${expectedUsed}`);
  return new Fraction(price).mul(Math.min(used, expectedUsed)).div(expectedUsed);
}
