import { curvature, inverseOf } from "./curvature.ts";

// Where the records say nothing about a parameter, its logarithm is taken to lie within a standard deviation of
// 3, a factor of 20 either way: wide, and finite. A parameter that twenty people settle hardly feels it.
const LOOSE = 1 / 9;

/**
 * Variances and covariances of the logarithms of fitted parameters: the inverse of the curvature of −ln L at
 * its lowest point (by differences), with a loose belief added so that a level direction stays finite.
 */
export function spreadAt(
  logLikelihoodAt: (parameters: readonly number[]) => number,
  logs: readonly number[],
): readonly (readonly number[])[] {
  const curved = curvature((at) => -logLikelihoodAt(at.map((log) => Math.exp(log))), logs);
  for (let loose = LOOSE; loose < 1e9; loose *= 4) {
    const inverse = inverseOf(
      curved.map((row, index) => row.map((value, other) => value + (index === other ? loose : 0))),
    );
    if (inverse !== undefined) return inverse;
  }
  throw new RangeError(`no curvature at ${logs.join(", ")}`);
}
