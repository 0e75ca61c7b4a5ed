import cdf from "@stdlib/stats-base-dists-normal-cdf";
import quantile from "@stdlib/stats-base-dists-normal-quantile";

/** P(Z ≤ z) for Z ~ Normal(0, 1). */
export function normalAtMost(z: number): number {
  return cdf(z, 0, 1);
}

/** The z below which Z lies with this chance; nought and one are the infinities. */
export function normalQuantile(chance: number): number {
  return quantile(chance, 0, 1);
}

/** The height of the curve at z. */
export function normalDensity(z: number): number {
  return Math.exp(-0.5 * z * z) / Math.sqrt(2 * Math.PI);
}
