import { type ExactMinor, exactNumber, type Minor } from "#core/words";
import { Fraction } from "fraction.js";

/** How a studio pays for a class, amounts in minor units. */
export type StudioPay =
  | { readonly form: "flat"; readonly pay: Minor }
  /** 28.00 and 2.50 for each head above 6, at most 50.00 */
  | {
      readonly form: "tiered";
      readonly base: Minor;
      readonly perHead: Minor;
      readonly above: number;
      readonly cap: Minor | null;
    }
  /** 4.00 a head, at least 20.00 */
  | { readonly form: "per head"; readonly perHead: Minor; readonly minimum: Minor }
  /** 60 % of what people pay there, at least a minimum */
  | {
      readonly form: "share of takings";
      readonly share: Fraction;
      readonly takingsPerHead: Minor;
      readonly minimum: Minor;
    };

/** What the studio pays for a class with so many people, exact. Method: trade F4. */
export function studioPay(pay: StudioPay, heads: number): ExactMinor {
  switch (pay.form) {
    case "flat":
      return new Fraction(pay.pay);
    case "tiered":
      return capped(headsAbove(heads, pay.above).mul(pay.perHead).add(pay.base), pay.cap);
    case "per head":
      return atLeast(new Fraction(pay.perHead).mul(heads), pay.minimum);
    case "share of takings":
      return atLeast(pay.share.mul(pay.takingsPerHead).mul(heads), pay.minimum);
  }
}

/** By the decimals as written: a Fraction made of the double 3.999999999 is slow to find and another number. */
function headsAbove(heads: number, above: number): Fraction {
  const more = new Fraction(heads).sub(exactNumber(above));
  return more.lt(0) ? new Fraction(0) : more;
}

function capped(amount: Fraction, cap: Minor | null): Fraction {
  return cap !== null && amount.gt(cap) ? new Fraction(cap) : amount;
}

function atLeast(amount: Fraction, minimum: Minor): Fraction {
  return amount.lt(minimum) ? new Fraction(minimum) : amount;
}
