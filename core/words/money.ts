import { Fraction } from "fraction.js";
import { type Brand, branded } from "./brand.ts";
import { type CurrencyCode, currencyDigits } from "./currency.ts";
import { bad, good, problem, type Result } from "./problem.ts";

/**
 * 12.50 pounds is { minor: 1250, currency: "GBP" }; 1,250 yen is { minor: 1250, currency: "JPY" }.
 * `minor` is a whole number of the currency's smallest coin, never a fraction of one.
 */
export type Minor = Brand<number, "Minor">;
export type Money = { readonly minor: Minor; readonly currency: CurrencyCode };

/** An exact amount between coins: a yield, a rate times a part of an hour. In minor units. */
export type ExactMinor = Fraction;

export function minor(count: number): Minor {
  if (!Number.isSafeInteger(count)) throw new RangeError(`not whole minor units: ${count}`);
  return branded<Minor>(count);
}

/** Half a coin goes up, away from zero for debts too: 0.5 → 1, −0.5 → −1. */
export function roundToMinor(exact: Fraction): Minor {
  const away = exact.abs().add("1/2").floor();
  return minor(Number(exact.compare(0) < 0 ? away.neg() : away));
}

const DECIMAL = /^-?\d{1,12}(\.\d{1,6})?$/;

/** A document counts in one currency, so "9.00 USD" in it is told apart from a slip of the pen. */
function nextFor(text: string): string {
  return /\d/.test(text) && /\p{Sc}|\p{L}/u.test(text)
    ? "Write it like 12.50, without a sign or letters: all amounts here are in one currency."
    : "Write it like 12.50.";
}

/** Reads "12.5" or "12.50" in the given currency; more decimals than the currency has is a problem. */
export function readMoney(text: string, currency: CurrencyCode, place: string): Result<Minor> {
  const trimmed = text.trim();
  if (!DECIMAL.test(trimmed)) {
    return bad(problem("money-unreadable", place, `“${text}” is not an amount of money.`, nextFor(trimmed)));
  }
  const exact = new Fraction(trimmed).mul(10 ** currencyDigits(currency));
  if (exact.d !== 1n) {
    const places = currencyDigits(currency);
    return bad(
      problem(
        "money-too-fine",
        place,
        `${text} has more decimals than ${currency} has.`,
        `Use at most ${places}.`,
      ),
    );
  }
  return good(minor(Number(exact.s * exact.n)));
}

/** The plain decimal string of documents: 1250 GBP → "12.50". No symbol, no grouping. */
export function moneyText(amount: Minor, currency: CurrencyCode): string {
  const places = currencyDigits(currency);
  const whole = Math.abs(amount)
    .toString()
    .padStart(places + 1, "0");
  const sign = amount < 0 ? "-" : "";
  if (places === 0) return `${sign}${whole}`;
  return `${sign}${whole.slice(0, -places)}.${whole.slice(-places)}`;
}

/** An exact amount as text with two decimals more than the currency has, without trailing noise: "7.685". */
export function exactText(amount: Fraction, currency: CurrencyCode): string {
  const places = currencyDigits(currency);
  const rounded = amount.div(10 ** places).round(places + 2);
  const [head = "0", tail = ""] = rounded.toString(places + 4).split(".");
  return places === 0 && tail === "" ? head : `${head}.${tail.padEnd(places, "0")}`;
}
