import { uniformFloat64 } from "pure-rand/distribution/uniformFloat64";
import type { RandomGenerator } from "pure-rand/types/RandomGenerator";

/** Draws that stand for a distribution, each with its weight; the weights add to 1. */
export type WeightedDraws = {
  readonly draws: readonly (readonly number[])[];
  readonly weights: readonly number[];
  /** as many equal draws as these are worth: 1 ÷ Σ w² */
  readonly effective: number;
};

/** Weights from logarithms that may be far below what a double holds. */
export function weighted(draws: WeightedDraws["draws"], logs: readonly number[]): WeightedDraws {
  const top = logs.reduce((most, log) => Math.max(most, log), Number.NEGATIVE_INFINITY);
  if (!Number.isFinite(top)) throw new RangeError(`no draw has any chance: ${top}`);
  const raw = logs.map((log) => Math.exp(log - top));
  const sum = raw.reduce((total, weight) => total + weight, 0);
  const weights = raw.map((weight) => weight / sum);
  return { draws, weights, effective: 1 / weights.reduce((total, weight) => total + weight * weight, 0) };
}

export function weightedMean({ draws, weights }: WeightedDraws): readonly number[] {
  const dimensions = draws[0]?.length ?? 0;
  return Array.from({ length: dimensions }, (_, at) =>
    draws.reduce((sum, draw, index) => sum + (draw[at] ?? 0) * (weights[index] ?? 0), 0),
  );
}

export function weightedCovariance(
  given: WeightedDraws,
  mean: readonly number[],
): readonly (readonly number[])[] {
  const { draws, weights } = given;
  const about = draws.map((draw) => draw.map((value, at) => value - (mean[at] ?? 0)));
  return mean.map((_, i) =>
    mean.map((_, j) =>
      about.reduce((sum, each, index) => sum + (each[i] ?? 0) * (each[j] ?? 0) * (weights[index] ?? 0), 0),
    ),
  );
}

/** So many draws of equal weight: at even steps along the weights, the first at random. */
export function resampled(
  { draws, weights }: WeightedDraws,
  count: number,
  random: RandomGenerator,
): WeightedDraws["draws"] {
  const chosen: (readonly number[])[] = [];
  let passed = 0;
  let next = uniformFloat64(random) / count;
  for (const [index, draw] of draws.entries()) {
    passed += weights[index] ?? 0;
    for (; next < passed && chosen.length < count; next += 1 / count) chosen.push(draw);
  }
  // the weights may add to a hair less than one
  while (chosen.length < count) chosen.push(draws.at(-1) ?? []);
  return chosen;
}

/** The value below which so much of the weight lies. */
export function weightedQuantile(
  values: readonly number[],
  weights: readonly number[],
  share: number,
): number {
  const order = values
    .map((_, index) => index)
    .sort((one, other) => (values[one] ?? 0) - (values[other] ?? 0));
  let sum = 0;
  for (const index of order) {
    sum += weights[index] ?? 0;
    if (sum >= share - 1e-12) return values[index] ?? 0;
  }
  return values[order.at(-1) ?? 0] ?? 0;
}
