import type { YearFlows } from "./flows-of.ts";

/** What is owed in classes after a day, all passes together. */
export function owedAt(owed: YearFlows["owed"], day: string): number {
  return owed.reduce(
    (sum, { start, after }) => sum + (after.findLast(({ date }) => date <= day)?.coins ?? start),
    0,
  );
}
