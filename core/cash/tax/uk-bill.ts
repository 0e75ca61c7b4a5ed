import { exactNumber, roundToMinor } from "#core/words";
import { Fraction } from "fraction.js";
import { type BandPart, bandTax, bandWalk } from "./band-walk.ts";
import type { BillLine, TaxBill } from "./tax-bill.ts";
import type { TaxQuestion, TradingYear, UkTable } from "./tax-types.ts";

/**
 * What a year of trade adds to her United Kingdom tax: income tax on all income less what others have taken of it,
 * and Class 4. Costs or the trading allowance, whichever leaves less to tax. Each line is rounded to the penny.
 */
export function ukBill(table: UkTable, { other, atSource }: TaxQuestion, trading: TradingYear): TaxBill {
  const { profit, method, lines: profitLines } = taxableProfit(table, trading);
  const all = incomeTax(table, other + profit);
  const taken = atSource ?? incomeTax(table, other).tax;
  const class4 = class4Of(table, profit);
  const contribution = bandTax(class4);
  const bill = all.tax + contribution - taken;
  const whole = all.tax + contribution;
  return {
    profit,
    method,
    incomeTax: all.tax - taken,
    contribution,
    state: 0,
    atSource: taken,
    bill,
    atSourceShare: whole === 0 ? new Fraction(0) : exactNumber(Math.min(taken, whole)).div(whole),
    class2: profit < table.class2.smallProfits && trading.income > 0 ? 52 * table.class2.aWeek : null,
    lines: [
      ...profitLines,
      ...(other === 0 ? [] : [{ label: "other income", coins: other }]),
      { label: "personal allowance", coins: -Math.min(all.allowance, other + profit) },
      { label: "taxed", coins: all.taxable, total: true },
      ...partLines("income tax", all.parts),
      ...partLines("Class 4", class4),
      ...(taken === 0 ? [] : [{ label: "taken at source", coins: -taken }]),
      { label: "the bill", coins: bill, total: true },
    ],
  };
}

type Profit = {
  readonly profit: number;
  readonly method: "costs" | "allowance";
  readonly lines: readonly BillLine[];
};

/** The allowance never makes a loss; costs may, and then there is nothing to tax. */
function taxableProfit({ tradingAllowance }: UkTable, { income, costs }: TradingYear): Profit {
  const byAllowance = Math.max(0, income - tradingAllowance);
  const byCosts = income - costs;
  const allowance = byAllowance < byCosts;
  const off = allowance ? Math.min(tradingAllowance, income) : costs;
  const profit = Math.max(0, income - off);
  return {
    profit,
    method: allowance ? "allowance" : "costs",
    lines: [
      { label: "received", coins: income },
      { label: allowance ? "trading allowance in place of costs" : "costs paid", coins: -off },
      { label: byCosts < 0 && !allowance ? "profit, a loss" : "profit", coins: profit, total: true },
    ],
  };
}

/** The allowance goes by one for every two above the taper, by whole pounds. */
function incomeTax(table: UkTable, income: number) {
  const { amount, taperFrom } = table.allowance;
  const above = Math.max(0, income - taperFrom);
  const allowance = Math.max(0, amount - Math.floor(above / 200) * 100);
  const taxable = Math.max(0, income - allowance);
  const parts = bandWalk(taxable, table.bands);
  return { allowance, taxable, parts, tax: bandTax(parts) };
}

function class4Of({ class4 }: UkTable, profit: number): readonly BandPart[] {
  const between = Math.max(0, Math.min(profit, class4.upTo) - class4.from);
  const above = Math.max(0, profit - class4.upTo);
  return [
    { coins: between, rate: class4.rate },
    { coins: above, rate: class4.above },
  ]
    .filter(({ coins }) => coins > 0)
    .map(({ coins, rate }) => ({ coins, rate, tax: roundToMinor(exactNumber(coins).mul(rate)) }));
}

export function partLines(label: string, parts: readonly BandPart[]): readonly BillLine[] {
  return parts.map(({ coins, rate, tax }) => ({ label, coins: tax, of: { coins, rate } }));
}
