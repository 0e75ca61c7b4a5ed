import type { LostTo } from "./compare-types.ts";

/** All the dates that are lost, whatever they are lost to. */
export function sumOf(lostTo: readonly LostTo[]): number {
  return lostTo.reduce((sum, { dates }) => sum + dates, 0);
}
