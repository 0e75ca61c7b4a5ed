import { normalAtMost } from "#kernels/statistics";
import type { PathQuestion } from "../money-types.ts";
import type { PathMonth } from "./path-months.ts";

/** What a month brings, averaged with the months after it over which a thin one may be made up. */
export type PathIncome = { readonly mean: number; readonly deviation: number };

/**
 * Income a month over the window that begins there, with the classes of `kept` (a bit for each that may go). A class
 * stays above or below its middle for all of the window; two uncertain classes go together by `together`.
 */
export function pathIncome(
  months: readonly PathMonth[],
  at: number,
  kept: number,
  question: PathQuestion,
): PathIncome {
  const window = months.slice(at, at + question.window);
  const mean = window.reduce((sum, month) => sum + month.sure + keptCoins(month, kept), 0) / window.length;
  const deviations = (window[0]?.deviations ?? []).map(
    (_, one) => window.reduce((sum, month) => sum + (month.deviations[one] ?? 0), 0) / window.length,
  );
  const apart = deviations.reduce((sum, each) => sum + each * each, 0);
  const all = deviations.reduce((sum, each) => sum + each, 0);
  return { mean, deviation: Math.sqrt(apart + question.together * (all * all - apart)) };
}

/** P(income ≥ need); where nothing is uncertain 1 or 0. */
export function pathChance({ mean, deviation }: PathIncome, need: number): number {
  if (deviation === 0) return mean >= need ? 1 : 0;
  return normalAtMost((mean - need) / deviation);
}

export function keptCoins({ droppable }: PathMonth, kept: number): number {
  return droppable.reduce((sum, { coins }, at) => (isKept(kept, at) ? sum + coins : sum), 0);
}

export function isKept(kept: number, at: number): boolean {
  return ((kept >> at) & 1) === 1;
}
