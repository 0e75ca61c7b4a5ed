import { Fraction } from "fraction.js";

/**
 * The least number of heads that pays a cost, each leaving a margin: cost 31.40 and 7.485 a head → 5.
 * Null is never: a head that leaves nothing pays for nothing, whatever the cost. Methods 3, n* = ⌈C/(y−v)⌉.
 */
export function breakEvenHeads(cost: Fraction | number, margin: Fraction | number): number | null {
  const each = new Fraction(margin);
  if (each.lte(0)) return null;
  return Number(new Fraction(cost).div(each).ceil());
}
