import type { CostHeading, Heading } from "../posting/account.ts";
import { type BookLine, type IncomePart, sideOf } from "./book-line.ts";

/**
 * The earned view: income when it was taught and costs when they arose, which is what decisions rest on. Classes
 * that ran out, and what refunds kept or gave, stand on lines of their own.
 */
export type EarnedView = {
  readonly currency: string;
  readonly months: readonly EarnedMonth[];
};

export type EarnedMonth = {
  /** "2026-11" */
  readonly month: string;
  readonly income: readonly EarnedRow[];
  readonly costs: readonly { readonly heading: CostHeading; readonly amount: number }[];
  /** income less costs */
  readonly left: number;
};

export type EarnedRow = {
  readonly part: Exclude<IncomePart, "owed" | "unpaid">;
  readonly heading: Heading;
  readonly amount: number;
};

export function earnedView(lines: readonly BookLine[], currency: string): EarnedView {
  const inMoney = lines.filter((line) => line.commodity === currency);
  const months = [...new Set(inMoney.map(monthOf))].sort();
  const found = months.map((month) =>
    earnedMonth(
      month,
      inMoney.filter((line) => monthOf(line) === month),
    ),
  );
  return { currency, months: found.filter(({ income, costs }) => income.length + costs.length > 0) };
}

function earnedMonth(month: string, lines: readonly BookLine[]): EarnedMonth {
  const income = new Map<string, EarnedRow>();
  const costs = new Map<string, EarnedMonth["costs"][number]>();
  for (const { account, amount } of lines) {
    const it = sideOf(account);
    if (it.side === "income" && it.part !== "owed" && it.part !== "unpaid") {
      const before = income.get(account)?.amount ?? 0;
      income.set(account, { part: it.part, heading: it.heading, amount: before - amount });
    }
    if (it.side === "cost" && it.part === "cost") {
      costs.set(account, { heading: it.heading, amount: (costs.get(account)?.amount ?? 0) + amount });
    }
  }
  const [earned, spent] = [inOrder(income), inOrder(costs)];
  return { month, income: earned, costs: spent, left: sumOf(earned) - sumOf(spent) };
}

function inOrder<Row extends { readonly amount: number }>(rows: ReadonlyMap<string, Row>): readonly Row[] {
  return [...rows]
    .filter(([, { amount }]) => amount !== 0)
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([, row]) => row);
}

function sumOf(rows: readonly { readonly amount: number }[]): number {
  return rows.reduce((sum, { amount }) => sum + amount, 0);
}

function monthOf({ date }: BookLine): string {
  return date.slice(0, 7);
}
