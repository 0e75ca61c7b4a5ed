/** Chances of the counts 0, 1, 2 …: [0.25, 0.5, 0.25] for two fair coins. They add to 1. */
export type Distribution = readonly number[];

export function meanOf(distribution: Distribution): number {
  return distribution.reduce((sum, chance, count) => sum + chance * count, 0);
}

export function varianceOf(distribution: Distribution): number {
  const mean = meanOf(distribution);
  return distribution.reduce((sum, chance, count) => sum + chance * (count - mean) ** 2, 0);
}

/** The least count that is not exceeded with at least this chance; 0.5 gives the median. */
export function quantileOf(distribution: Distribution, share: number): number {
  // a sum of doubles may miss 1 by 1e-15 for each count
  const enough = share - 1e-12;
  let sum = 0;
  const found = distribution.findIndex((chance) => {
    sum += chance;
    return sum >= enough;
  });
  return found < 0 ? distribution.length - 1 : found;
}

/**
 * The mean over the lowest part: of counts 0 to 3, equally likely, the worst quarter has the mean 0. With a value
 * for each count, the mean of the values over the lowest counts.
 */
export function meanOfLowest(
  distribution: Distribution,
  part: number,
  valueOf: (count: number) => number = (count) => count,
): number {
  if (!(part > 0 && part <= 1)) throw new RangeError(`part: ${part}`);
  let left = part;
  let sum = 0;
  for (const [count, chance] of distribution.entries()) {
    const taken = Math.min(left, chance);
    sum += taken * valueOf(count);
    left -= taken;
  }
  return sum / (part - left);
}
