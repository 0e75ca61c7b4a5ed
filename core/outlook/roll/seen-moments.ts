import { matchSeen, type SeenCount } from "#kernels/statistics";
import { luckAdds, type RollMoments } from "./roll-moments.ts";

/**
 * What the first sessions showed, taken into the moments of the later ones, session after session: the count that was
 * seen, or the mean and variance of "14 or more", moves every later mean by its covariance. What remains uncertain
 * shrinks and grows with the mean, as it does for Poisson counts about a Gamma mean: after three weeks without anybody
 * the fourth is no longer as uncertain as it was. An evening that varies by its luck too tells less of later ones. Changes the arrays that it is given. Answers ln of the chance of all
 * that was seen: of counts with the moments that remain (exact for one session; for many as good as those are).
 */
export function takeSeen(
  { sessions, mean, covariance, luck }: RollMoments,
  seen: readonly SeenCount[],
): number {
  const before = mean.slice();
  let logChance = 0;
  for (const [s, each] of seen.entries()) {
    const row = s * sessions;
    const expected = Math.max(mean[s]!, LEAST);
    const scale = scaleOf(mean[s]!, before[s]!);
    const linear = Math.max(covariance[row + s]!, LEAST);
    const lucky = luckAdds(linear * scale, expected, luck[s]!);
    const variance = Math.max(linear * scale + lucky, LEAST);
    const matched = matchSeen(each, expected, variance);
    logChance += matched.logChance;
    // how much of the uncertainty about this session is gone, and how far it was off
    // never by less than its links to later ones rest on, else they would grow without end
    const pivot = linear + Math.max(lucky / scale, luckAdds(linear, before[s]!, luck[s]!));
    const gone = (1 - Math.min(1, matched.variance / variance)) / pivot;
    const off = (matched.mean - expected) / pivot;
    for (let t = s + 1; t < sessions; t += 1) {
      const link = covariance[row + t]!;
      mean[t] = mean[t]! + link * off;
      const pull = link * gone;
      const other = t * sessions;
      for (let v = t; v < sessions; v += 1)
        covariance[other + v] = covariance[other + v]! - pull * covariance[row + v]!;
    }
  }
  if (seen.length > 0) scaleRest(seen.length, before, mean, covariance);
  return logChance;
}

const LEAST = 0.02;
// a mean that ten weeks of luck have moved further than this was guessed wrongly, not only uncertain
const [LEAST_SCALE, MOST_SCALE] = [0.1, 4];

function scaleOf(now: number, before: number): number {
  if (!(before > 0)) return 1;
  return Math.min(MOST_SCALE, Math.max(LEAST_SCALE, now / before));
}

function scaleRest(from: number, before: Float64Array, mean: Float64Array, covariance: Float64Array): void {
  const sessions = mean.length;
  const roots = Float64Array.from(mean, (now, at) => Math.sqrt(scaleOf(now, before[at]!)));
  for (let t = from; t < sessions; t += 1) {
    for (let v = t; v < sessions; v += 1) {
      const at = t * sessions + v;
      covariance[at] = covariance[at]! * roots[t]! * roots[v]!;
    }
  }
}
