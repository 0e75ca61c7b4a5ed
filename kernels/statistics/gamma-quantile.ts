import quantile from "@stdlib/stats-base-dists-gamma-quantile";

/** The value below which a Gamma with this shape and mean lies with this chance. */
export function gammaQuantile(chance: number, shape: number, mean: number): number {
  if (!(chance >= 0 && chance <= 1 && shape > 0 && mean > 0)) {
    throw new RangeError(`gamma: ${chance}, ${shape}, ${mean}`);
  }
  return quantile(chance, shape, shape / mean);
}
