import { Fraction } from "fraction.js";

/**
 * P(X ≥ successes) for X ~ Binomial(trials, chance), as a fraction without any rounding: at least one of two
 * fair coins, 3/4. For the rare sums that fall on the line of a decision; whole numbers of thousands of digits.
 */
export function exactBinomialAtLeast(successes: number, trials: number, chance: Fraction): Fraction {
  const hit = chance.n;
  const miss = chance.d - chance.n;
  let ways = 1n;
  let numerator = 0n;
  // from all trials down: C(n, k − 1) = C(n, k) · k ÷ (n − k + 1)
  for (let count = trials; count >= Math.max(0, successes); count -= 1) {
    numerator += ways * hit ** BigInt(count) * miss ** BigInt(trials - count);
    ways = (ways * BigInt(count)) / BigInt(trials - count + 1);
  }
  return new Fraction(numerator, chance.d ** BigInt(trials));
}
