import quantile from "@stdlib/stats-base-dists-beta-quantile";

/** The share below which a Beta(a, b) lies with this chance; the median of Beta(1, 1) is 0.5. */
export function betaQuantile(chance: number, a: number, b: number): number {
  if (!(chance >= 0 && chance <= 1 && a > 0 && b > 0)) throw new RangeError(`beta: ${chance}, ${a}, ${b}`);
  return quantile(chance, a, b);
}
