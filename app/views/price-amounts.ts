import { currencyDigits, readCurrency } from "#core/words";
import { Fraction } from "fraction.js";
import type { PriceSheetInput } from "./price-sheet.ts";

export type PriceAmounts = {
  /** "−£12.50" for "-12.50" */
  readonly write: (text: string) => string;
  /** "£12.50" for "-12.50", where the words say that it is a loss */
  readonly writeAbsolute: (text: string) => string;
};

/** Writes the decimal strings of an answer for the reader. */
export function priceAmounts({ practice, money }: PriceSheetInput): PriceAmounts {
  const currency = readCurrency(practice.currency);
  const coins = 10 ** (currency.ok ? currencyDigits(currency.value) : 2);
  const exact = (text: string) => new Fraction(text).mul(coins);
  return {
    write: (text) => money(exact(text)),
    writeAbsolute: (text) => money(exact(text).abs()),
  };
}

/** "1 person", "10.7 people". */
export function peopleWords(count: number): string {
  const rounded = Number(count.toFixed(1));
  return rounded === 1 ? "1 person" : `${rounded} people`;
}
