import { type AmountWriter, coinText, type PartLine } from "#core/price";
import { exactNumber } from "#core/words";
import type { MoneyCase, MoneyFound } from "./money-found.ts";
import { moneySentences } from "./money-sentences.ts";
import type { Case, MoneyYear } from "./money-types.ts";
import { moneyWorking } from "./money-working.ts";
import { owedAt } from "./owed-at.ts";
import { pathJson, type PathJson } from "./path-json.ts";
import { potAt } from "./pot-at.ts";
import { taxJson, type TaxJson } from "./tax-json.ts";

export type CaseText = Readonly<Record<Case, string>>;

export type CashMonthJson = {
  /** "2027-01" */
  readonly month: string;
  readonly in: string;
  readonly out: string;
  /** tax paid; below nought where it came back */
  readonly tax: string;
  readonly end: CaseText;
  readonly lowest: CaseText;
  /** of the middle case */
  readonly lowestOn: string;
  /** sold with passes and not yet taught at the month's end */
  readonly owed: string;
  /** what should lie in the tax pot at the month's end; null without tax */
  readonly pot: string | null;
};

/** The answer for other programs: amounts are decimal strings; in the middle case where no other is named. */
export type MoneyJson = {
  readonly format: "hallful/money-answer@1";
  readonly currency: string;
  readonly from: string;
  readonly until: string;
  readonly sentences: readonly string[];
  /** the same sentences by what they are about */
  readonly says: {
    readonly cash: readonly string[];
    readonly tax: readonly string[];
    readonly path: readonly string[];
    readonly caution: readonly string[];
  };
  readonly opening: string;
  readonly months: readonly CashMonthJson[];
  readonly lowest: { readonly on: Readonly<Record<Case, string>>; readonly balance: CaseText };
  readonly reserve: { readonly fall: string; readonly month: string; readonly advised: CaseText };
  readonly uncertain: boolean;
  readonly tax: TaxJson | null;
  readonly path: PathJson | null;
  readonly guesses: readonly string[];
  readonly working: readonly PartLine[];
};

export function moneyJson(year: MoneyYear, found: MoneyFound, write: AmountWriter): MoneyJson {
  const text = (coins: number) => coinText(exactNumber(coins), year.currency);
  const { middle } = found.cases;
  const inCases = (of: (each: MoneyCase) => number): CaseText => ({
    low: text(of(found.cases.low)),
    middle: text(of(middle)),
    high: text(of(found.cases.high)),
  });
  const says = moneySentences(year, found, write);
  return {
    format: "hallful/money-answer@1",
    currency: year.currency,
    from: year.from.toString(),
    until: year.until.toString(),
    sentences: [...says.cash, ...says.tax, ...says.path, ...says.caution],
    says,
    opening: text(year.opening),
    months: middle.book.months.map((month, at) => ({
      month: month.month,
      in: text(month.in),
      out: text(month.out),
      tax: text(month.tax),
      end: inCases(({ book }) => book.months[at]?.end ?? 0),
      lowest: inCases(({ book }) => book.months[at]?.lowest ?? 0),
      lowestOn: month.lowestOn,
      owed: text(owedAt(middle.owed, `${month.month}-31`)),
      pot:
        year.tax === null
          ? null
          : text(potAt(`${month.month}-31`, year.tax, middle.taxYears, middle.flows, middle.taxDates)),
    })),
    lowest: {
      on: {
        low: found.cases.low.book.lowestOn,
        middle: middle.book.lowestOn,
        high: found.cases.high.book.lowestOn,
      },
      balance: inCases(({ book }) => book.lowest),
    },
    reserve: {
      fall: text(middle.reserve.fall),
      month: text(middle.reserve.month),
      advised: inCases(({ reserve }) => reserve.advised),
    },
    uncertain: found.uncertain,
    tax: year.tax === null ? null : taxJson(year, year.tax, middle),
    path: year.path === null || found.path === null ? null : pathJson(year, year.path, found.path),
    guesses: year.guesses,
    working: moneyWorking(year, found),
  };
}
