import type { MoneyJson } from "#core/cash";

export type MonthPoint = { readonly x: number; readonly y: number };
type Case = "low" | "middle" | "high";

/**
 * Where the balances stand, in major units: the opening one at 0, the end of the first month at 1, and before it the
 * lowest day of that month, its 16th about half way. Nothing is drawn between, so a line through them is never above
 * the lowest day.
 */
export function monthPoints({
  opening,
  months,
  lowest,
}: Pick<MoneyJson, "opening" | "months" | "lowest">): Readonly<Record<Case, readonly MonthPoint[]>> & {
  readonly lowest: MonthPoint;
} {
  const line = (at: Case) => [
    { x: 0, y: Number(opening) },
    ...months.flatMap((month, index) => [
      { x: dayAt(index, month.lowestOn), y: Number(month.lowest[at]) },
      { x: index + 1, y: Number(month.end[at]) },
    ]),
  ];
  const day = lowest.on.middle;
  const index = months.findIndex(({ month }) => day.startsWith(month));
  return {
    low: line("low"),
    middle: line("middle"),
    high: line("high"),
    lowest: { x: dayAt(index, day), y: Number(lowest.balance.middle) },
  };
}

/** The morning of the 1st is where its month begins. */
function dayAt(index: number, day: string): number {
  return index + (Number(day.slice(8)) - 1) / 31;
}
