import { type ExactMinor, minutes } from "#core/words";
import { Fraction } from "fraction.js";

/** C 34.60, 156 minutes, 20 an hour after 26 % tax, 10 people, v 0.20: (34.60 + 2.6 × 20 ÷ 0.74) ÷ 10 + 0.20 = 10.69. */
export type TargetPay = {
  /** what the evening costs, in minor units */
  readonly cost: ExactMinor | number;
  readonly minutes: number;
  /** what she wants for an hour, after tax, in minor units */
  readonly perHour: ExactMinor | number;
  /** the part of what is left that goes in tax, from 0 to below 1 */
  readonly taxShare: Fraction;
  /** people on average, above 0 */
  readonly heads: Fraction | number;
  readonly perHead: ExactMinor | number;
};

/** The yield per head that pays her what she asks: (C + H·w ÷ (1 − t)) ÷ E[n] + v, exact. Method: trade F26. */
export function targetPrice({
  cost,
  minutes: time,
  perHour,
  taxShare,
  heads,
  perHead,
}: TargetPay): ExactMinor {
  if (taxShare.gte(1) || new Fraction(heads).lte(0))
    throw new RangeError(`tax, heads: ${taxShare.toString()}, ${heads.toString()}`);
  const pay = new Fraction(perHour).mul(minutes(time)).div(60).div(new Fraction(1).sub(taxShare));
  return pay.add(cost).div(heads).add(perHead);
}
