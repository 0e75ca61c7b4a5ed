import type { KeepAdvice } from "#core/outlook";

/** One simulated class from its first session to its eightieth, as if it were never closed. */
export type ClassRun = {
  readonly heads: readonly number[];
  /** what each session leaves, and what it leaves on average for these rates */
  readonly contributions: readonly number[];
  readonly expected: readonly number[];
  /** what the product says after each session on which notice can be given */
  readonly looks: readonly ((() => KeepAdvice) | null)[];
};

/** After how many sessions notice is given; null: never. */
export type Rule = {
  readonly name: string;
  readonly closesAfter: (run: ClassRun, breakEven: number) => number | null;
};

const YEAR = 40;

export const rules: readonly Rule[] = [
  {
    name: "Hallful, when its advice is firm",
    closesAfter: ({ looks }) =>
      first(looks, (look) => {
        const advice = look?.();
        return advice?.kind === "close" && advice.firm;
      }),
  },
  {
    name: "close after three thin weeks",
    closesAfter: ({ heads }, breakEven) =>
      first(heads, (_, at) => at >= 2 && heads.slice(at - 2, at + 1).every((count) => count < breakEven)),
  },
  {
    name: "three thin weeks after a first term",
    closesAfter: ({ heads }, breakEven) =>
      first(heads, (_, at) => at >= 14 && heads.slice(at - 2, at + 1).every((count) => count < breakEven)),
  },
  {
    name: "last four weeks below what pays",
    closesAfter: (run, breakEven) =>
      first(run.looks, (look, at) => look !== null && thinLately(run, at, breakEven)),
  },
  {
    name: "wait a year, then the last four weeks",
    closesAfter: (run, breakEven) =>
      first(run.looks, (look, at) => look !== null && at + 1 >= YEAR && thinLately(run, at, breakEven)),
  },
  { name: "never close", closesAfter: () => null },
];

function thinLately({ heads }: ClassRun, at: number, breakEven: number): boolean {
  const latest = heads.slice(Math.max(0, at - 3), at + 1);
  return latest.reduce((sum, count) => sum + count, 0) < breakEven * latest.length;
}

function first<Item>(items: readonly Item[], wanted: (item: Item, at: number) => boolean): number | null {
  const found = items.findIndex(wanted);
  return found < 0 ? null : found + 1;
}
