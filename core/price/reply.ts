import { type CurrencyCode, type ExactMinor, moneyText, roundToMinor, type WorkingLine } from "#core/words";

/** An answer for people and programs, and the places in the document that nothing reads, like a misspelt key. */
export type Reply<Json> = { readonly json: Json; readonly unused: readonly string[] };

/** A line of working under the part of the answer that it belongs to. */
export type PartLine = WorkingLine & { readonly part: string };

/** Writes an exact amount of minor units of a currency for the reader: "12.50 GBP" or "£12.50". */
export type AmountWriter = (exact: ExactMinor, currency: CurrencyCode) => string;

/** The amount to the coin with the letters of its currency: "12.50 GBP". */
export const plainAmount: AmountWriter = (exact, currency) => `${coinText(exact, currency)} ${currency}`;

/** The amount to the coin, as documents write it: "12.50". */
export function coinText(exact: ExactMinor, currency: CurrencyCode): string {
  return moneyText(roundToMinor(exact), currency);
}

export function partLines(part: string, lines: readonly WorkingLine[]): readonly PartLine[] {
  return lines.map((line) => ({ part, ...line }));
}
