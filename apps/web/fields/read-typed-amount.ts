import { bad, type CurrencyCode, good, moneyText, problem, readAmount, type Result } from "#core/words";
import { currencySign } from "../words/money-words.ts";

/**
 * Reads what was typed as an amount of money and answers the plain decimal string of documents. The currency's own
 * sign or letters and spaces are let pass: "£8" and "8 GBP" are "8.00". Problems: those of readAmount,
 * "currencies-mixed".
 */
export function readTypedAmount(text: string, currency: CurrencyCode, place: string): Result<string> {
  const typed = text.trim();
  if (typed === "") {
    return bad(problem("money-unreadable", place, "There is no amount here.", "Write it like 12.50."));
  }
  const bare = withoutSign(typed, [currencySign(currency), currency]);
  if (/^(\p{Sc}|[A-Z]{3})?\s*[\d.]+\s*(\p{Sc}|[A-Z]{3})?$/u.test(bare) && !/^[\d.]+$/.test(bare)) {
    const next = `Give it in ${currency}: all amounts here are in one currency.`;
    return bad(problem("currencies-mixed", place, `${typed} is not in ${currency}.`, next));
  }
  const read = readAmount(bare, currency, place);
  return read.ok ? good(moneyText(read.value, currency)) : read;
}

/** "£8", "8 £" and "GBP 8" as "8"; whatever else stands there stays. */
function withoutSign(typed: string, own: readonly string[]): string {
  const before = own.find((sign) => typed.startsWith(sign));
  if (before !== undefined) return typed.slice(before.length).trim();
  const after = own.find((sign) => typed.endsWith(sign));
  return after === undefined ? typed : typed.slice(0, -after.length).trim();
}
