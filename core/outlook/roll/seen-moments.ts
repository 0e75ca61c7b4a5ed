import { matchSeen, type SeenCount } from "#kernels/statistics";
import type { RollMoments } from "./roll-moments.ts";

/**
 * What the first sessions showed, taken into the moments of the later ones, session after session: the count that was
 * seen, or the mean and variance of "14 or more", moves every later mean by its covariance. Changes the arrays that it
 * is given. Answers ln of the chance of all that was seen. The chances are those of counts with the moments that
 * remain (exact for one session; for many as good as the first two moments are).
 */
export function takeSeen({ sessions, mean, covariance }: RollMoments, seen: readonly SeenCount[]): number {
  let logChance = 0;
  for (const [s, each] of seen.entries()) {
    const row = s * sessions;
    const expected = Math.max(mean[s]!, 0.02);
    const variance = Math.max(covariance[row + s]!, 0.02);
    const matched = matchSeen(each, expected, variance);
    logChance += matched.logChance;
    // how much of the uncertainty about this session is gone, and how far it was off
    const gone = (1 - matched.variance / variance) / variance;
    const off = (matched.mean - expected) / variance;
    for (let t = s + 1; t < sessions; t += 1) {
      const link = covariance[row + t]!;
      mean[t] = mean[t]! + link * off;
      const pull = link * gone;
      const other = t * sessions;
      for (let v = t; v < sessions; v += 1)
        covariance[other + v] = covariance[other + v]! - pull * covariance[row + v]!;
    }
  }
  return logChance;
}
