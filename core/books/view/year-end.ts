import type { CostHeading, Heading } from "../posting/account.ts";
import { type BookLine, sideOf } from "./book-line.ts";

/**
 * A tax year by what was really received and paid (cash basis), by heading. A pass counts when it was paid for,
 * a refund when it was given back; what is owed in classes or still unpaid does not count and is shown elsewhere
 * as a memo. How a year is taxed is for the tax authority and an accountant to say.
 */
export type YearEnd = {
  readonly from: string;
  readonly until: string;
  readonly currency: string;
  readonly income: readonly { readonly heading: Heading; readonly amount: number }[];
  readonly incomeTotal: number;
  readonly costs: readonly { readonly heading: CostHeading; readonly amount: number }[];
  readonly costsTotal: number;
  /** money found or missing when the box was counted */
  readonly cashDifferences: number;
  /** her own money put in less taken out: neither income nor cost */
  readonly own: number;
  /** income less costs, with the differences of the box */
  readonly left: number;
};

/**
 * The lines of a heading move only among owed, earned and unpaid until money moves: so their sum is the money that
 * came in for the heading, with its sign turned. Both dates belong to the year: 6 April until 5 April.
 */
export function yearEnd(
  lines: readonly BookLine[],
  { from, until, currency }: { readonly from: string; readonly until: string; readonly currency: string },
): YearEnd {
  const income = new Map<Heading, number>();
  const costs = new Map<CostHeading, number>();
  const other = { own: 0, difference: 0 };
  for (const { date, commodity, account, amount } of lines) {
    if (commodity !== currency || date < from || date > until) continue;
    const it = sideOf(account);
    if (it.side === "income") income.set(it.heading, (income.get(it.heading) ?? 0) - amount);
    if (it.side === "cost") costs.set(it.heading, (costs.get(it.heading) ?? 0) + amount);
    if (it.side === "own" || it.side === "difference") other[it.side] -= amount;
  }
  const [received, paid] = [inOrder(income), inOrder(costs)];
  const [incomeTotal, costsTotal] = [sumOf(received), sumOf(paid)];
  return {
    from,
    until,
    currency,
    income: received,
    incomeTotal,
    costs: paid,
    costsTotal,
    cashDifferences: other.difference,
    own: other.own,
    left: incomeTotal - costsTotal + other.difference,
  };
}

function inOrder<Key extends string>(
  sums: ReadonlyMap<Key, number>,
): readonly { readonly heading: Key; readonly amount: number }[] {
  return [...sums]
    .filter(([, amount]) => amount !== 0)
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([heading, amount]) => ({ heading, amount }));
}

function sumOf(rows: readonly { readonly amount: number }[]): number {
  return rows.reduce((sum, { amount }) => sum + amount, 0);
}
