import { coinText } from "#core/price";
import { exactNumber, exactNumberText } from "#core/words";
import type { MoneyCase } from "./money-found.ts";
import type { MoneyYear } from "./money-types.ts";
import { potAt } from "./pot-at.ts";
import { setAside } from "./set-aside.ts";
import { nextRate } from "./tax/tax-bill.ts";
import type { TaxDate } from "./tax/tax-dates.ts";
import type { TaxQuestion, TaxSource } from "./tax/tax-types.ts";
import type { TaxYear } from "./tax/tax-years.ts";

export type TaxYearJson = {
  readonly from: string;
  readonly until: string;
  readonly table: string;
  readonly tableName: string;
  /** false where the year has no table and the nearest stands in */
  readonly ownTable: boolean;
  readonly sources: readonly TaxSource[];
  /** days after the months asked, filled up with their average day */
  readonly unseenDays: number;
  readonly received: string;
  readonly costs: string;
  readonly profit: string;
  readonly method: "costs" | "allowance" | null;
  readonly incomeTax: string;
  readonly contribution: string;
  readonly state: string;
  readonly bill: string;
  /** of each receipt, in whole percent rounded up */
  readonly setAsidePercent: number;
  /** of the next hundred, as a share */
  readonly nextRate: string;
};

/** Always an estimate: the tax authority or an accountant decides. */
export type TaxJson = {
  readonly estimate: true;
  readonly place: string;
  readonly years: readonly TaxYearJson[];
  /** in the months asked and the year after them */
  readonly dates: readonly {
    readonly date: string;
    readonly what: TaxDate["what"];
    readonly forYear: string;
    readonly amount: string | null;
    /** it falls within the months asked */
    readonly inMonths: boolean;
  }[];
  /** what should lie in the pot on the first morning, and what does; null where it is not said */
  readonly pot: { readonly shouldBe: string; readonly is: string | null };
};

export function taxJson(year: MoneyYear, question: TaxQuestion, middle: MoneyCase): TaxJson {
  const text = (coins: number) => coinText(exactNumber(coins), year.currency);
  const eve = year.from.subtract({ days: 1 }).toString();
  const { taxYears, flows, taxDates } = middle;
  const last = year.until.add({ years: 1 }).toString();
  return {
    estimate: true,
    place: taxYears[0]?.chosen.table.place ?? "",
    years: taxYears.map((it) => yearJson(it, question, text)),
    dates: taxDates
      .filter(({ date }) => date <= last)
      .map(({ date, what, year: forYear, coins }) => ({
        date,
        what,
        forYear,
        amount: coins === null ? null : text(coins),
        inMonths: date <= year.until.toString(),
      })),
    pot: {
      shouldBe: text(potAt(eve, question, taxYears, flows, taxDates)),
      is: question.pot === null ? null : text(question.pot),
    },
  };
}

function yearJson(year: TaxYear, question: TaxQuestion, text: (coins: number) => string): TaxYearJson {
  const { from, until, chosen, unseenDays, trading, bill } = year;
  const { table } = chosen;
  return {
    from: from.toString(),
    until: until.toString(),
    table: table.id,
    tableName: table.name,
    ownTable: chosen.own,
    sources: table.sources,
    unseenDays,
    received: text(trading.income),
    costs: text(trading.costs),
    profit: text(bill.profit),
    method: bill.method,
    incomeTax: text(bill.incomeTax),
    contribution: text(bill.contribution),
    state: text(bill.state),
    bill: text(bill.bill),
    setAsidePercent: setAside(year).percent,
    nextRate: exactNumberText(nextRate(table, question, trading, 10_000)),
  };
}
