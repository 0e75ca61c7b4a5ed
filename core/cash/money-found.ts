import { type CashBook, cashBook } from "./cash-book.ts";
import type { Flow } from "./flow.ts";
import { flowsOf, type YearFlows } from "./flows-of.ts";
import { type Case, cases, type MoneyYear } from "./money-types.ts";
import { type PathFound, pathFound } from "./path/path-found.ts";
import { type Reserve, reserveFor } from "./reserve-for.ts";
import { type TaxDate, taxDates } from "./tax/tax-dates.ts";
import { type TaxYear, taxYears } from "./tax/tax-years.ts";

/** One case of the year: every uncertain figure at its low, its middle or its high. */
export type MoneyCase = {
  readonly flows: readonly Flow[];
  readonly owed: YearFlows["owed"];
  readonly taxYears: readonly TaxYear[];
  readonly taxDates: readonly TaxDate[];
  readonly book: CashBook;
  readonly reserve: Reserve;
};

export type MoneyFound = {
  readonly cases: Readonly<Record<Case, MoneyCase>>;
  /** the cases are not all alike */
  readonly uncertain: boolean;
  readonly path: PathFound | null;
};

export function moneyFound(year: MoneyYear): MoneyFound {
  const [low, middle, high] = cases.map((at) => oneCase(year, at));
  if (low === undefined || middle === undefined || high === undefined) throw new RangeError("three cases");
  const uncertain = low.book.end !== high.book.end || low.book.lowest !== high.book.lowest;
  const path = year.path === null ? null : pathFound(year, year.path);
  return { cases: { low, middle, high }, uncertain, path };
}

function oneCase(year: MoneyYear, at: Case): MoneyCase {
  const { flows, owed } = flowsOf(year, at);
  const { tax, from, until } = year;
  const years = tax === null ? [] : taxYears(tax, flows, year);
  const dates = tax === null ? [] : taxDates(tax, years, from);
  const withTax = [...flows, ...taxFlows(dates, until.toString())].sort((one, other) =>
    one.date < other.date ? -1 : one.date > other.date ? 1 : 0,
  );
  const book = cashBook(year.opening, withTax, from, until);
  return {
    flows: withTax,
    owed,
    taxYears: years,
    taxDates: dates,
    book,
    reserve: reserveFor(book, year.opening),
  };
}

function taxFlows(dates: readonly TaxDate[], until: string): readonly Flow[] {
  return dates.flatMap(({ date, coins, what }) =>
    coins === null || date > until
      ? []
      : [{ date, coins: -coins, kind: "tax" as const, name: what, business: false }],
  );
}
