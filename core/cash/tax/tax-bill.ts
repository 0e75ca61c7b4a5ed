import { exactNumber } from "#core/words";
import type { Fraction } from "fraction.js";
import type { TaxQuestion, TaxTable, TradingYear } from "./tax-types.ts";
import { ukBill } from "./uk-bill.ts";
import { usBill } from "./us-bill.ts";

/** A line of the sum of a bill, in coins; how the figures are written is decided later. */
export type BillLine = {
  readonly label: string;
  readonly coins: number;
  /** "of 30,000.00 at 20 %": coins and rate stand apart until they are written */
  readonly of?: { readonly coins: number; readonly rate: Fraction };
  readonly total?: boolean;
};

/** An estimate of what a year's trade adds to her tax, in coins. */
export type TaxBill = {
  readonly profit: number;
  /** actual costs, or the trading allowance in place of them */
  readonly method: "costs" | "allowance" | null;
  readonly incomeTax: number;
  /** Class 4, or self-employment tax */
  readonly contribution: number;
  readonly state: number;
  readonly atSource: number;
  /** to pay to the tax authority; below nought where tax comes back */
  readonly bill: number;
  /** part of the whole tax that others have taken already: between 0 and 1 */
  readonly atSourceShare: Fraction;
  /** voluntary Class 2 for a year with small profits; null where it does not come in question */
  readonly class2: number | null;
  readonly lines: readonly BillLine[];
};

export function taxBill(table: TaxTable, question: TaxQuestion, trading: TradingYear): TaxBill {
  return table.rules === "uk" ? ukBill(table, question, trading) : usBill(table, question, trading);
}

/** How much of the next hundred whole units that come in would go in tax. */
export function nextRate(
  table: TaxTable,
  question: TaxQuestion,
  trading: TradingYear,
  hundred: number,
): Fraction {
  const now = taxBill(table, question, trading).bill;
  const then = taxBill(table, question, { ...trading, income: trading.income + hundred }).bill;
  return exactNumber(then - now).div(hundred);
}
