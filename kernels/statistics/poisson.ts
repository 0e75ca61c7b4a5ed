import pmf from "@stdlib/stats-base-dists-poisson-pmf";

/** P(X = count) for X ~ Poisson(mean), mean from 0; throws on a mean that is not. */
export function poissonPmf(count: number, mean: number): number {
  if (!(mean >= 0 && Number.isFinite(mean))) throw new RangeError(`mean: ${mean}`);
  return pmf(count, mean);
}
