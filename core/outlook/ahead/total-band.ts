import { normalAtMost } from "#kernels/statistics";
import type { TotalHeads } from "./look-ahead.ts";

export type Band = { readonly mean: number; readonly low: number; readonly high: number };

/** The heads of all sessions over all draws: eight chances of ten lie between low and high. */
export function totalBand(totals: readonly TotalHeads[]): Band {
  const mean = totals.reduce((sum, each) => sum + each.mean, 0) / totals.length;
  return { mean, low: totalQuantile(totals, 0.1), high: totalQuantile(totals, 0.9) };
}

/** P(total ≥ heads). */
export function totalAtLeast(totals: readonly TotalHeads[], heads: number): number {
  return 1 - chanceBelow(totals, heads);
}

/** By halving between the farthest ends of all the curves. */
function totalQuantile(totals: readonly TotalHeads[], share: number): number {
  const reach = totals.map(({ mean, variance }) => [mean, 6 * Math.sqrt(variance)] as const);
  let low = Math.min(...reach.map(([mean, far]) => mean - far));
  let high = Math.max(...reach.map(([mean, far]) => mean + far));
  for (let step = 0; step < 40; step += 1) {
    const middle = (low + high) / 2;
    if (chanceBelow(totals, middle) < share) low = middle;
    else high = middle;
  }
  return Math.max(0, (low + high) / 2);
}

function chanceBelow(totals: readonly TotalHeads[], heads: number): number {
  const sum = totals.reduce((chances, { mean, variance }) => {
    const deviation = Math.sqrt(variance);
    if (deviation === 0) return chances + (heads < mean ? 0 : 1);
    return chances + normalAtMost((heads - mean) / deviation);
  }, 0);
  return sum / totals.length;
}
