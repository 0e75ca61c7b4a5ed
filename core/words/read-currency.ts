import { type CurrencyCode, isCurrency } from "./currency.ts";
import { bad, good, problem, type Result } from "./problem.ts";

/** Reads "GBP". Problem: "currency-unknown". */
export function readCurrency(code: string, place = "currency"): Result<CurrencyCode> {
  if (isCurrency(code)) return good(code);
  const next = "Give the three letters of ISO 4217, like GBP or USD.";
  return bad(problem("currency-unknown", place, `“${code.slice(0, 40)}” is not a currency we know.`, next));
}
