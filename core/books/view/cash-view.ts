import type { Means } from "../posting/account.ts";
import { type BookLine, sideOf } from "./book-line.ts";

/**
 * The cash view: money when it moved, which is what a cash-basis tax return counts. Never mixed with the earned
 * view: a pass sold in September is here in September, and there on each evening it is used.
 */
export type CashView = {
  readonly currency: string;
  readonly days: readonly CashRow[];
  readonly months: readonly CashRow[];
};

export type CashRow = {
  /** "2026-11-25", or "2026-11" for a month */
  readonly when: string;
  readonly means: Means;
  readonly in: number;
  readonly out: number;
};

/** By day and by month, and in each by where the money lay: cash, card, bank. */
export function cashView(lines: readonly BookLine[], currency: string): CashView {
  const moved = lines.filter((line) => line.commodity === currency && sideOf(line.account).side === "means");
  return {
    currency,
    days: rows(moved, ({ date }) => date),
    months: rows(moved, ({ date }) => date.slice(0, 7)),
  };
}

function rows(lines: readonly BookLine[], whenOf: (line: BookLine) => string): readonly CashRow[] {
  const found = new Map<string, CashRow>();
  for (const line of lines) {
    const side = sideOf(line.account);
    if (side.side !== "means") continue;
    const when = whenOf(line);
    const key = `${when} ${side.means}`;
    const before = found.get(key) ?? { when, means: side.means, in: 0, out: 0 };
    found.set(
      key,
      line.amount > 0
        ? { ...before, in: before.in + line.amount }
        : { ...before, out: before.out - line.amount },
    );
  }
  return [...found].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, row]) => row);
}
