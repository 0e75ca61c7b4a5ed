import type { Fraction } from "fraction.js";
import type { Temporal } from "temporal-polyfill";
import type { TaxDate } from "./tax-dates.ts";
import type { TaxQuestion, UkTable } from "./tax-types.ts";
import type { TaxYear } from "./tax-years.ts";

type Year = {
  readonly from: Temporal.PlainDate;
  readonly until: Temporal.PlainDate;
  readonly bill: number;
  readonly atSource: Fraction;
  readonly table: UkTable;
};

/**
 * 31 January after the tax year: what is still due of its bill, and with it the first half on account of the next
 * year; 31 July: the second half. So a first bill of 3,000 asks 4,500 that January. Nothing on account after a bill
 * below 1,000 or when more than 80 % is taken at source.
 */
export function ukDates(question: TaxQuestion, taxYears: readonly TaxYear[]): readonly TaxDate[] {
  const years = [...lastYear(question, taxYears), ...taxYears.flatMap(known)];
  let onAccount = question.last?.onAccount ?? 0;
  const paid = years.flatMap((year) => {
    const half = onAccountHalf(year);
    const january = { date: dayAfter(year, 1), year: year.from.toString() };
    const dates: readonly TaxDate[] = [
      {
        date: dayAfter(year, 0),
        what: "on account",
        year: year.from.toString(),
        coins: onAccount - halfOf(onAccount),
      },
      { ...january, what: "balance", coins: year.bill - onAccount },
      { date: january.date, what: "on account", year: year.from.add({ years: 1 }).toString(), coins: half },
    ];
    onAccount = 2 * half;
    return dates;
  });
  return [...paid, ...lastHalf(years, onAccount), ...register(question, taxYears)];
}

/** 31 July in the year in which the tax year ends, or 31 January of the year after. */
function dayAfter({ until }: Pick<Year, "until">, years: 0 | 1): string {
  return years === 0 ? `${until.year}-07-31` : `${until.year + 1}-01-31`;
}

function halfOf(coins: number): number {
  return Math.ceil(coins / 2);
}

function onAccountHalf({ bill, atSource, table }: Year): number {
  const { from, atSource: most } = table.onAccount;
  return bill < from || atSource.gt(most) ? 0 : halfOf(bill);
}

/** The second half of what the last year of all asks: it falls due in the July after next. */
function lastHalf(years: readonly Year[], onAccount: number): readonly TaxDate[] {
  const year = years.at(-1);
  if (year === undefined) return [];
  const next = year.from.add({ years: 1 });
  const date = dayAfter({ until: year.until.add({ years: 1 }) }, 0);
  return [{ date, what: "on account", year: next.toString(), coins: onAccount / 2 }];
}

function known({ from, until, bill, chosen }: TaxYear): readonly Year[] {
  if (chosen.table.rules !== "uk") return [];
  return [{ from, until, bill: bill.bill, atSource: bill.atSourceShare, table: chosen.table }];
}

/** The bill of the year before the first: what is taken at source is as in the first. */
function lastYear({ last }: TaxQuestion, [first]: readonly TaxYear[]): readonly Year[] {
  if (last === null || first === undefined) return [];
  return known(first).map(({ from, until, atSource, table }) => ({
    from: from.subtract({ years: 1 }),
    until: until.subtract({ years: 1 }),
    bill: last.bill,
    atSource,
    table,
  }));
}

/** By 5 October after the first tax year whose takings pass the trading allowance; who had a bill is registered. */
function register({ registered, last }: TaxQuestion, years: readonly TaxYear[]): readonly TaxDate[] {
  const first = years.find(
    ({ trading, chosen }) => chosen.table.rules === "uk" && trading.income > chosen.table.tradingAllowance,
  );
  if (registered || last !== null || first === undefined) return [];
  const date = `${first.until.year}-10-05`;
  return [{ date, what: "register", year: first.from.toString(), coins: null }];
}
