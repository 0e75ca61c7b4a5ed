import pmf from "@stdlib/stats-base-dists-binomial-pmf";

/**
 * P(X = successes) for X ~ Binomial(trials, chance): two heads of three fair coins, 0.375.
 * Whole numbers of trials from 0, chance from 0 to 1; throws on anything else. By the saddle-point form of
 * the library, within 1e-14 of the exact value for 325 trials.
 */
export function binomialPmf(successes: number, trials: number, chance: number): number {
  checkBinomial(trials, chance);
  return pmf(successes, trials, chance);
}

/** P(X ≤ successes). */
export function binomialAtMost(successes: number, trials: number, chance: number): number {
  if (successes >= trials) return 1;
  // the side with less in it is summed, so that a tail of 1e-30 is not lost beside 1
  return successes < trials * chance
    ? sumOf(0, successes, trials, chance)
    : 1 - sumOf(successes + 1, trials, trials, chance);
}

/** P(X ≥ successes). */
export function binomialAtLeast(successes: number, trials: number, chance: number): number {
  if (successes <= 0) return 1;
  return successes > trials * chance
    ? sumOf(successes, trials, trials, chance)
    : 1 - sumOf(0, successes - 1, trials, chance);
}

function sumOf(from: number, until: number, trials: number, chance: number): number {
  let sum = 0;
  for (let count = from; count <= until; count += 1) sum += binomialPmf(count, trials, chance);
  return Math.min(1, sum);
}

function checkBinomial(trials: number, chance: number): void {
  if (!Number.isInteger(trials) || trials < 0) throw new RangeError(`trials: ${trials}`);
  if (!(chance >= 0 && chance <= 1)) throw new RangeError(`chance: ${chance}`);
}
