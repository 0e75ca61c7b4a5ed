import { bad, type CurrencyCode, good, moneyText, problem, readAmount, type Result } from "#core/words";

/**
 * Reads what was typed as an amount of money and answers the plain decimal string of documents. A currency
 * sign in front and spaces are let pass: "£8" is "8.00". Problems: those of readAmount.
 */
export function readTypedAmount(text: string, currency: CurrencyCode, place: string): Result<string> {
  const bare = text.trim().replace(/^\p{Sc}\s*/u, "");
  if (bare === "") {
    return bad(problem("money-unreadable", place, "There is no amount here.", "Write it like 12.50."));
  }
  const read = readAmount(bare, currency, place);
  return read.ok ? good(moneyText(read.value, currency)) : read;
}
