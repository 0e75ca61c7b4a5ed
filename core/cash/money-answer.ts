import { type AmountWriter, plainAmount, type Reply } from "#core/price";
import { good, readDocument, type Result } from "#core/words";
import { yearMoneySchema } from "./money-document.ts";
import { moneyFound } from "./money-found.ts";
import { type MoneyJson, moneyJson } from "./money-json.ts";
import { readYearMoney } from "./read-year-money.ts";

/**
 * Reads the money of a year and answers the bank month by month with its lowest point and the reserve, the tax to put
 * aside with its dates, and the path to full time. `write` writes the amounts of the sentences. Problems: those of
 * the document (see readYearMoney).
 */
export function moneyAnswer(input: unknown, write: AmountWriter = plainAmount): Result<Reply<MoneyJson>> {
  const read = readDocument(yearMoneySchema, input);
  if (!read.ok) return read;
  const year = readYearMoney(read.value.value);
  if (!year.ok) return year;
  return good({ json: moneyJson(year.value, moneyFound(year.value), write), unused: read.value.unused });
}
