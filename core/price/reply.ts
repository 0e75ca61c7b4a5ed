import { type CurrencyCode, currencyDigits, type ExactMinor, type WorkingLine } from "#core/words";

/** An answer for people and programs, and the places in the document that nothing reads, like a misspelt key. */
export type Reply<Json> = { readonly json: Json; readonly unused: readonly string[] };

/** A line of working under the part of the answer that it belongs to. */
export type PartLine = WorkingLine & { readonly part: string };

/** Writes an exact amount of minor units of a currency for the reader: "12.50 GBP" or "£12.50". */
export type AmountWriter = (exact: ExactMinor, currency: CurrencyCode) => string;

/** The amount to the coin with the letters of its currency: "12.50 GBP". */
export const plainAmount: AmountWriter = (exact, currency) => `${coinText(exact, currency)} ${currency}`;

/**
 * The amount to the coin, as documents write it: "12.50". Half a coin goes away from nought. However large: the
 * year of a thousand people at a thousand million pounds has more coins than a Minor can count.
 */
export function coinText(exact: ExactMinor, currency: CurrencyCode): string {
  const places = currencyDigits(currency);
  const whole = exact.abs().add("1/2").floor().n;
  const digits = whole.toString().padStart(places + 1, "0");
  const sign = exact.lt(0) && whole > 0n ? "-" : "";
  return places === 0 ? `${sign}${digits}` : `${sign}${digits.slice(0, -places)}.${digits.slice(-places)}`;
}

export function partLines(part: string, lines: readonly WorkingLine[]): readonly PartLine[] {
  return lines.map((line) => ({ part, ...line }));
}
