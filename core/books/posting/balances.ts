import type { Entry } from "./entry.ts";

export type Balance = { readonly account: string; readonly commodity: string; readonly amount: number };

/** What lies in each account after the entries, accounts in the order of their names; empty ones are left out. */
export function balances(entries: readonly Entry[]): readonly Balance[] {
  const sums = new Map<string, Balance>();
  for (const { account, commodity, amount } of entries.flatMap(({ lines }) => lines)) {
    const key = `${account} ${commodity}`;
    const before = sums.get(key)?.amount ?? 0;
    sums.set(key, { account, commodity, amount: before + amount });
  }
  return [...sums.entries()]
    .filter(([, { amount }]) => amount !== 0)
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([, balance]) => balance);
}

export function balanceOf(entries: readonly Entry[], account: string, commodity: string): number {
  const lines = entries.flatMap((it) => it.lines);
  return lines
    .filter((line) => line.account === account && line.commodity === commodity)
    .reduce((sum, { amount }) => sum + amount, 0);
}
