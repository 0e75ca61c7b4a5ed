import { negativeBinomialPmf, negativeBinomialUpTo } from "./negative-binomial.ts";
import { poissonPmf } from "./poisson.ts";

/**
 * How a count varies about its mean:
 * steady: always the same, or the two whole numbers about a mean of 9.5;
 * poisson: as many independent people deciding each for themselves;
 * varied: more than that, with variance = dispersion × mean.
 */
export type CountModel =
  | { readonly kind: "steady"; readonly mean: number }
  | { readonly kind: "poisson"; readonly mean: number }
  | { readonly kind: "varied"; readonly mean: number; readonly dispersion: number };

export function countPmf(model: CountModel, count: number): number {
  switch (model.kind) {
    case "steady":
      return steadyPmf(model.mean, count);
    case "poisson":
      return poissonPmf(count, model.mean);
    case "varied":
      return negativeBinomialPmf(count, model.mean, model.dispersion);
  }
}

/** The chances of 0, 1, … below the count, together. */
export function countsBelow(model: CountModel, count: number): readonly number[] {
  if (count <= 0) return [];
  switch (model.kind) {
    case "steady":
      return Array.from({ length: count }, (_, each) => steadyPmf(model.mean, each));
    case "poisson":
      // dispersion 1 is Poisson; one step from count to count is five times as fast as each by itself
      return negativeBinomialUpTo(count - 1, model.mean, 1);
    case "varied":
      return negativeBinomialUpTo(count - 1, model.mean, model.dispersion);
  }
}

/** 9.25 is 9 three times of four and 10 once. */
function steadyPmf(mean: number, count: number): number {
  if (!(mean >= 0 && Number.isFinite(mean))) throw new RangeError(`mean: ${mean}`);
  const low = Math.floor(mean);
  if (count === low) return 1 - (mean - low);
  return count === low + 1 ? mean - low : 0;
}

// Beyond the mean every term of these models is at most its neighbour's; below this share of the sum the
// rest of a tail cannot change its last digit.
const NEGLIGIBLE = 1e-18;
// far beyond where a tail that begins at 1e-6 ends; a loop that never ends is worse than a digit
const MOST_TERMS = 10_000;

// What is left of one keeps fifteen digits after the point; a chance below this is summed by itself.
const SMALL = 1e-6;

/** P(D ≥ count), with all its digits also where it is 1e-15. */
export function countAtLeast(model: CountModel, count: number): number {
  if (count <= 0) return 1;
  const rest = 1 - countsBelow(model, count).reduce((sum, chance) => sum + chance, 0);
  if (rest > SMALL || count <= model.mean) return Math.max(0, rest);
  let sum = 0;
  for (let step = count; step < count + MOST_TERMS; step += 1) {
    const term = countPmf(model, step);
    sum += term;
    if (term <= sum * NEGLIGIBLE) break;
  }
  return sum;
}
