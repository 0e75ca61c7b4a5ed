import { exactNumber, roundToMinor } from "#core/words";
import type { Temporal } from "temporal-polyfill";
import type { Flow } from "../flow.ts";
import { type TaxBill, taxBill } from "./tax-bill.ts";
import { type ChosenTable, tableFor, type TaxYearSpan, taxYearOf } from "./tax-tables.ts";
import type { TaxQuestion, TradingYear } from "./tax-types.ts";

/** A tax year that the months asked reach into, and the estimate of its bill. */
export type TaxYear = TaxYearSpan & {
  readonly chosen: ChosenTable;
  readonly trading: TradingYear;
  /** days of it after the months asked, filled with the average day of these months */
  readonly unseenDays: number;
  readonly bill: TaxBill;
};

export type TaxSpan = { readonly from: Temporal.PlainDate; readonly until: Temporal.PlainDate };

/**
 * The tax years from the one in which the first day lies to the one of the last. Cash basis: money counts on the day
 * it moves. A year that goes on after the last day is filled up with the average day of all the months asked.
 */
export function taxYears(question: TaxQuestion, flows: readonly Flow[], span: TaxSpan): readonly TaxYear[] {
  const years: TaxYear[] = [];
  let first = span.from;
  while (daysBetween(first, span.until) >= 0) {
    const year = taxYearOf(question.rules, first);
    years.push(oneYear(question, flows, span, year));
    first = year.until.add({ days: 1 });
  }
  return years;
}

function oneYear(question: TaxQuestion, flows: readonly Flow[], span: TaxSpan, year: TaxYearSpan): TaxYear {
  const business = flows.filter((flow) => flow.business);
  const inYear = business.filter(({ date }) => date >= year.from.toString() && date <= year.until.toString());
  const unseenDays = Math.max(0, daysBetween(span.until, year.until));
  const share = exactNumber(unseenDays).div(daysBetween(span.from, span.until) + 1);
  const before = daysBetween(year.from, span.from) >= 0 ? question.soFar : { income: 0, costs: 0 };
  const whole = (sign: 1 | -1, start: number) =>
    start + sumOf(inYear, sign) + roundToMinor(exactNumber(sumOf(business, sign)).mul(share));
  const trading = { income: whole(1, before.income), costs: whole(-1, before.costs) };
  const chosen = tableFor(question.tables, year);
  return { ...year, chosen, trading, unseenDays, bill: taxBill(chosen.table, question, trading) };
}

/** What came in (1) or went out (−1), above nought. */
function sumOf(flows: readonly Flow[], sign: 1 | -1): number {
  return flows.reduce((sum, { coins }) => (coins * sign > 0 ? sum + coins * sign : sum), 0);
}

function daysBetween(from: Temporal.PlainDate, until: Temporal.PlainDate): number {
  return from.until(until, { largestUnit: "days" }).days;
}
