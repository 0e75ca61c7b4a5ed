import type { ExactMinor } from "#core/words";
import { Fraction } from "fraction.js";
import type { Payer } from "./evening-types.ts";

/** What one head brings on average over the mix: 0.4 × 10.00 + 0.6 × 85.00 ÷ 10 = 9.10. Minor units. */
export function yieldOf(payers: readonly Payer[]): ExactMinor {
  return payers.reduce((sum, payer) => sum.add(payerPart(payer)), new Fraction(0));
}

export function payerPart({ share, price, classes }: Payer): ExactMinor {
  return share.mul(price).div(classes);
}
