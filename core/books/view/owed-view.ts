import type { CostHeading, Heading } from "../posting/account.ts";
import { sideOf } from "./book-line.ts";

/** A balance of an account, from `balances` or as a store adds it up. */
type Balance = { readonly account: string; readonly commodity: string; readonly amount: number };

/**
 * Who owes what to whom: classes and places paid ahead are her debt, what is unpaid is owed to her, what is due
 * she has yet to pay. A pass of ten at 85.00 with four used is 6 classes and 51.00.
 */
export type OwedView = {
  readonly currency: string;
  /** passes, blocks and places paid ahead, in the order of their ids; a place has no classes */
  readonly owed: readonly OwedLine[];
  readonly owedTotal: number;
  readonly classesTotal: number;
  readonly unpaid: readonly Omit<OwedLine, "classes">[];
  readonly unpaidTotal: number;
  readonly due: readonly { readonly heading: CostHeading; readonly to: string; readonly amount: number }[];
  readonly dueTotal: number;
};

export type OwedLine = {
  readonly heading: Heading;
  /** the pass or the place */
  readonly id: string;
  readonly amount: number;
  readonly classes: number;
};

export function owedView(balances: readonly Balance[], currency: string): OwedView {
  const money = balances.filter(({ commodity, amount }) => commodity === currency && amount !== 0);
  const left = classesLeft(balances);
  const owed = incomeLines(money, "owed").map((line) => ({ ...line, classes: left.get(line.id) ?? 0 }));
  const unpaid = incomeLines(money, "unpaid");
  const due = money.flatMap(({ account, amount }) => {
    const it = sideOf(account);
    return it.side === "cost" && it.part === "due"
      ? [{ heading: it.heading, to: it.id, amount: -amount }]
      : [];
  });
  return {
    currency,
    owed,
    owedTotal: sumOf(owed),
    classesTotal: owed.reduce((sum, { classes }) => sum + classes, 0),
    unpaid,
    unpaidTotal: sumOf(unpaid),
    due,
    dueTotal: sumOf(due),
  };
}

/** A debt stands below nought in the books and is shown above it. */
function incomeLines(
  money: readonly Balance[],
  part: "owed" | "unpaid",
): readonly { readonly heading: Heading; readonly id: string; readonly amount: number }[] {
  return money.flatMap(({ account, amount }) => {
    const it = sideOf(account);
    if (it.side !== "income" || it.part !== part) return [];
    return [{ heading: it.heading, id: it.id, amount: part === "owed" ? -amount : amount }];
  });
}

/** Classes left by pass, whoever holds them. */
function classesLeft(balances: readonly Balance[]): ReadonlyMap<string, number> {
  const left = new Map<string, number>();
  for (const { account, commodity, amount } of balances) {
    if (!account.startsWith("left:")) continue;
    const pass = commodity.slice("classes:".length);
    left.set(pass, (left.get(pass) ?? 0) + amount);
  }
  return left;
}

function sumOf(rows: readonly { readonly amount: number }[]): number {
  return rows.reduce((sum, { amount }) => sum + amount, 0);
}
