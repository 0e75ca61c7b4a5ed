import type { MoneyJson } from "#core/cash";

export type MonthPoint = { readonly x: number; readonly y: number };

/**
 * Where the balances stand: the opening one at 0, the end of the first month at 1, and the lowest day between, in
 * major units. The end of January is at 1 when it begins in January, its 16th about half way.
 */
export function monthPoints({ opening, months, lowest }: Pick<MoneyJson, "opening" | "months" | "lowest">): {
  readonly low: readonly MonthPoint[];
  readonly middle: readonly MonthPoint[];
  readonly high: readonly MonthPoint[];
  readonly lowest: MonthPoint;
} {
  const start = { x: 0, y: Number(opening) };
  const line = (at: "low" | "middle" | "high") => [
    start,
    ...months.map(({ end }, index) => ({ x: index + 1, y: Number(end[at]) })),
  ];
  const day = lowest.on.middle;
  const month = months.findIndex((it) => day.startsWith(it.month));
  const x =
    month <= 0 && day === months[0]?.lowestOn && Number(opening) === Number(lowest.balance.middle)
      ? 0
      : month + Number(day.slice(8)) / 31;
  return {
    low: line("low"),
    middle: line("middle"),
    high: line("high"),
    lowest: { x: Math.max(0, x), y: Number(lowest.balance.middle) },
  };
}
