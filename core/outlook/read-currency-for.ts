import { bad, problem, readCurrency } from "#core/words";

/** The currency that amounts need. Problems: "currency-missing", "currency-unknown". */
export function readCurrencyFor(currency: string | undefined, part: string): ReturnType<typeof readCurrency> {
  if (currency !== undefined) return readCurrency(currency);
  const says = `The amounts of ${part} are in no currency.`;
  return bad(problem("currency-missing", "currency", says, "Give the letters of the currency, like GBP."));
}
