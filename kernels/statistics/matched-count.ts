import type { SeenCount } from "./censored-poisson.ts";

/**
 * The chances of 0, 1, … most − 1 of a count with this mean and variance, and of `most` or more as the last.
 * By P(k + 1) = P(k) · (a + b ÷ (k + 1)), which is Poisson where the variance is the mean, binomial below and
 * negative binomial above it (Panjer's class); a normal curve where the mean is so large that P(0) is nothing.
 */
export function matchedCount(mean: number, variance: number, most: number): Float64Array {
  const centre = Math.max(mean, LEAST_MEAN);
  const spread = Math.max(variance, leastVariance(centre));
  const chances = new Float64Array(most + 1);
  if (centre > LARGE) fillNormal(chances, centre, spread);
  else fillPanjer(chances, centre, spread);
  let below = 0;
  for (let count = 0; count < most; count += 1) below += chances[count] ?? 0;
  // a binomial whose trials are no whole number misses one by a little
  if (below > 1) for (let count = 0; count < most; count += 1) chances[count] = (chances[count] ?? 0) / below;
  chances[most] = Math.max(0, 1 - below);
  return chances;
}

const LEAST_MEAN = 1e-9;
const LARGE = 300;

/** A whole count cannot vary less than this about its mean, and regulars never come like clockwork. */
function leastVariance(mean: number): number {
  return Math.max(mean / 5, mean < 1 ? mean * (1 - mean) : 0, LEAST_MEAN);
}

function fillPanjer(chances: Float64Array, mean: number, variance: number): void {
  const share = mean / variance;
  const a = 1 - share;
  const nearly = Math.abs(a) < 1e-9;
  let chance = Math.exp(nearly ? -mean : (mean * share * Math.log(share)) / a);
  const b = mean * share - a;
  for (let count = 0; count < chances.length - 1; count += 1) {
    chances[count] = chance;
    chance *= Math.max(0, a + b / (count + 1));
  }
}

function fillNormal(chances: Float64Array, mean: number, variance: number): void {
  const scale = 1 / Math.sqrt(2 * Math.PI * variance);
  for (let count = 0; count < chances.length - 1; count += 1) {
    chances[count] = scale * Math.exp(-((count - mean) ** 2) / (2 * variance));
  }
}

/** What a count that was seen says of one with a matched mean and variance. */
export type Matched = {
  readonly logChance: number;
  /** the mean and the variance of the count, once it is seen */
  readonly mean: number;
  readonly variance: number;
};

/** An exact count is itself from now on; "14 or more" is the mean of what lies there. */
export function matchSeen({ kind, count }: SeenCount, mean: number, variance: number): Matched {
  const most = kind === "exact" ? count + 1 : count;
  const chances = matchedCount(mean, variance, most);
  const chance = chances[count] ?? 0;
  const logChance = Math.log(Math.max(chance, SMALLEST));
  if (kind === "exact") return { logChance, mean: count, variance: 0 };
  if (chance < 1e-6) return { logChance, mean: count, variance: 0.5 };
  let first = 0;
  let second = 0;
  for (let below = 0; below < count; below += 1) {
    first += below * (chances[below] ?? 0);
    second += below ** 2 * (chances[below] ?? 0);
  }
  const above = Math.max(count, (mean - first) / chance);
  const spread = (mean ** 2 + variance - second) / chance - above ** 2;
  return { logChance, mean: above, variance: Math.min(Math.max(spread, 0), variance) };
}

const SMALLEST = 1e-300;
