import type { ExactMinor } from "#core/words";
import { Fraction } from "fraction.js";

/**
 * The share of heads that a price rise can lose and leave the evening as it was: Δ ÷ (p + Δ − v). From 9.00 to
 * 10.00 with 0.20 a head it is 1.00 ÷ 9.80, 10.2 %. Null when a head leaves nothing even after the rise: then no
 * share is level. Method: trade F9.
 */
export function levelLoss(price: ExactMinor, rise: ExactMinor, perHead: ExactMinor): Fraction | null {
  const margin = price.add(rise).sub(perHead);
  return margin.lte(0) ? null : new Fraction(rise).div(margin);
}
