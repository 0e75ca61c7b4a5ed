import { exactNumber } from "#core/words";
import type { Fraction } from "fraction.js";
import type { TaxYear } from "./tax/tax-years.ts";

/** 1,260.00 of tax on 18,000.00 received is 7 % exactly; what is put aside is told in whole percent, rounded up. */
export type SetAside = { readonly exact: Fraction; readonly percent: number };

/** What of each receipt covers the year's bill. Nothing where nothing is received or nothing is due. */
export function setAside({ trading, bill }: TaxYear): SetAside {
  const due = Math.max(0, bill.bill);
  if (trading.income === 0 || due === 0) return { exact: exactNumber(0), percent: 0 };
  const exact = exactNumber(due).div(trading.income);
  return { exact, percent: Number(exact.mul(100).ceil()) };
}
