import { isCurrency, minor, moneyText } from "#core/words";
import type { BookLine } from "./book-line.ts";
import { safeCell } from "./safe-cell.ts";
import type { OwedView } from "./owed-view.ts";
import type { YearEnd } from "./year-end.ts";

type Rows = readonly (readonly string[])[];

/**
 * The year as rows of a table: what, heading, amount in decimals of the currency; the first row names the columns.
 * `atTheEnd` are the balances of its last day, which a cash basis does not count.
 */
export function yearEndRows(year: YearEnd, atTheEnd: OwedView): Rows {
  const row = (what: string, heading: string, amount: number) => [
    what,
    safeCell(heading),
    decimal(amount, year.currency),
  ];
  return [
    ["what", "heading", `amount in ${year.currency}`],
    ...year.income.map(({ heading, amount }) => row("received", heading, amount)),
    row("received", "all", year.incomeTotal),
    ...year.costs.map(({ heading, amount }) => row("paid", heading, amount)),
    row("paid", "all", year.costsTotal),
    row("cash differences", "", year.cashDifferences),
    row("left", `${year.from} until ${year.until}`, year.left),
    row("own money put in less taken out", "not income", year.own),
    row("owed in classes and places at the end", NOT_COUNTED, atTheEnd.owedTotal),
    row("unpaid to her at the end", NOT_COUNTED, atTheEnd.unpaidTotal),
    row("due from her at the end", NOT_COUNTED, atTheEnd.dueTotal),
  ];
}

const NOT_COUNTED = "for memory, not counted";

/** Every line of the books as rows of a table, amounts in decimals, classes as whole numbers. */
export function bookRows(lines: readonly BookLine[]): Rows {
  return [
    ["date", "action", "account", "commodity", "amount"],
    ...lines.map(({ date, action, account, commodity, amount }) => [
      ...[date, action, account, commodity].map(safeCell),
      decimal(amount, commodity),
    ]),
  ];
}

function decimal(amount: number, commodity: string): string {
  return isCurrency(commodity) ? moneyText(minor(amount), commodity) : String(amount);
}
