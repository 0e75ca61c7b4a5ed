import { Fraction } from "fraction.js";

/**
 * The decimal that was written, exactly: 0.1 → 1/10 and not the binary number nearest to it.
 * Throws on NaN and the infinities.
 */
export function exactNumber(value: number): Fraction {
  if (!Number.isFinite(value)) throw new RangeError(`not a number: ${value}`);
  const [mantissa = "0", exponent = "0"] = String(value).split("e");
  return new Fraction(mantissa).mul(new Fraction(10).pow(Number(exponent)));
}

/** "1.75" or "0.3333": at most four decimals, no trailing noughts. */
export function exactNumberText(value: Fraction): string {
  return value.round(4).toString(8);
}
