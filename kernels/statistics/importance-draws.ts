import type { RandomGenerator } from "pure-rand/types/RandomGenerator";
import { cholesky, lowerSolve, lowerTimes, type SquareMatrix } from "./cholesky.ts";
import { latinDraws } from "./latin-draws.ts";
import { normalQuantile } from "./normal.ts";
import { weighted, weightedCovariance, type WeightedDraws, weightedMean } from "./weighted-draws.ts";

/** A posterior to be drawn from, in coordinates that may take any real value. */
export type Posterior = {
  readonly dimensions: number;
  /** the prior's draw at a point of the unit cube, by inverse distribution functions */
  readonly priorDraw: (point: readonly number[]) => readonly number[];
  /** ln of the prior's density in these coordinates, normalised */
  readonly logPrior: (draw: readonly number[]) => number;
  readonly logLikelihood: (draw: readonly number[]) => number;
};

export type DrawPlan = {
  /** draws of each round */
  readonly each: number;
  /** rounds end when so many effective draws are there, or at the last */
  readonly wanted: number;
  readonly rounds: number;
};

/**
 * Weighted draws of a posterior by adaptive importance sampling. The first round is drawn from the prior, each
 * further one from a normal curve fitted to all draws so far and widened; every draw is then weighted by
 * prior × likelihood ÷ the mixture of all that it could have come from, so that no round is lost and a bad fit
 * costs draws, not truth. The effective number tells how well it went. Moves the generator on. After Cornuet,
 * Marin, Mira and Robert, Adaptive multiple importance sampling, Scandinavian Journal of Statistics 39 (2012).
 */
export function importanceDraws(
  posterior: Posterior,
  plan: DrawPlan,
  random: RandomGenerator,
): WeightedDraws & { readonly rounds: number } {
  // the prior
  const draws = latinDraws(plan.each, posterior.dimensions, random).map(posterior.priorDraw);
  let seen = weighing(posterior, draws);
  let found = weighted(
    draws,
    seen.logTargets.map((log, at) => log - (seen.logPriors[at] ?? 0)),
  );
  const curves: Curve[] = [];
  let rounds = 1;
  for (; rounds < plan.rounds && found.effective < plan.wanted; rounds += 1) {
    // a curve through what is known so far
    const curve = fittedCurve(found);
    if (curve === null) break;
    curves.push(curve);
    const more = curveDraws(curve, plan.each, random);
    const next = weighing(posterior, more);
    seen = {
      draws: [...seen.draws, ...more],
      logTargets: [...seen.logTargets, ...next.logTargets],
      logPriors: [...seen.logPriors, ...next.logPriors],
    };
    // all draws against all that they could have come from
    const logs = seen.draws.map((draw, at) => {
      const prior = seen.logPriors[at] ?? 0;
      return (seen.logTargets[at] ?? 0) - logSum([prior, ...curves.map((each) => curveDensity(each, draw))]);
    });
    found = weighted(seen.draws, logs);
  }
  return { ...found, rounds };
}

type Weighing = {
  readonly draws: readonly (readonly number[])[];
  /** ln (prior × likelihood) */
  readonly logTargets: readonly number[];
  readonly logPriors: readonly number[];
};

function weighing(posterior: Posterior, draws: readonly (readonly number[])[]): Weighing {
  const logPriors = draws.map(posterior.logPrior);
  return {
    draws,
    logPriors,
    logTargets: draws.map((draw, at) => (logPriors[at] ?? 0) + posterior.logLikelihood(draw)),
  };
}

/** A normal curve wider than what it was fitted to, so that its tails reach beyond. */
type Curve = { readonly mean: readonly number[]; readonly lower: SquareMatrix; readonly logScale: number };

const WIDENED = 1.5;
// with fewer draws of weight the fitted curve would be a needle
const NARROWEST = 0.02;

function fittedCurve(found: WeightedDraws): Curve | null {
  const mean = weightedMean(found);
  const covariance = weightedCovariance(found, mean).map((row, i) =>
    row.map((value, j) => WIDENED * value + (i === j ? NARROWEST ** 2 : 0)),
  );
  const lower = cholesky(covariance);
  if (lower === null) return null;
  const logScale = lower.reduce((sum, row, i) => sum + Math.log(row[i] ?? 1), 0);
  return { mean, lower, logScale: logScale + (mean.length / 2) * Math.log(2 * Math.PI) };
}

// a draw at nought itself would lie infinitely far out
const SMALLEST_SHARE = 1e-12;

function curveDraws(
  { mean, lower }: Curve,
  count: number,
  random: RandomGenerator,
): readonly (readonly number[])[] {
  return latinDraws(count, mean.length, random).map((point) => {
    const normal = point.map((share) => normalQuantile(Math.max(share, SMALLEST_SHARE)));
    return lowerTimes(lower, normal).map((value, at) => value + (mean[at] ?? 0));
  });
}

function curveDensity({ mean, lower, logScale }: Curve, draw: readonly number[]): number {
  const z = lowerSolve(
    lower,
    draw.map((value, at) => value - (mean[at] ?? 0)),
  );
  return -0.5 * z.reduce((sum, value) => sum + value * value, 0) - logScale;
}

/** ln Σ e^x without overflow. */
function logSum(logs: readonly number[]): number {
  const top = Math.max(...logs);
  return top + Math.log(logs.reduce((sum, log) => sum + Math.exp(log - top), 0));
}
