import { curvature, inverseOf, slopes } from "./curvature.ts";
import { type LowestPoint, lowestPoint } from "./lowest-point.ts";
import { spreadAt } from "./spread-at.ts";

/** What fits best, and how surely. Parameters are above 0; the spread is of their logarithms. */
export type Fitted<Parameters> = {
  readonly parameters: Parameters;
  readonly logLikelihood: number;
  /** false when a parameter runs to the end of what is looked at: the records do not say more than that */
  readonly settled: boolean;
  readonly spread: readonly (readonly number[])[];
};

// Beyond these a beta or gamma is a spike or all at its ends, and a fit tells no more.
const LEAST = Math.log(1e-4);
const MOST = Math.log(1e5);
// a factor of three from the end is at the end: the likelihood is level there
const NEAR = Math.log(3);

/**
 * The parameters, all above 0, of the greatest likelihood; sought by their logarithms within 1e-4 to 1e5.
 * `starts` are tried in turn and the best kept.
 */
export function mostLikely(
  logLikelihoodAt: (parameters: readonly number[]) => number,
  starts: readonly (readonly number[])[],
): Fitted<readonly number[]> {
  const cost = (logs: readonly number[]): number =>
    logs.some((log) => log < LEAST || log > MOST)
      ? Number.POSITIVE_INFINITY
      : -logLikelihoodAt(logs.map((log) => Math.exp(log)));
  const found = starts
    .map((start) =>
      lowestPoint(
        cost,
        start.map((value) => Math.log(value)),
      ),
    )
    .reduce((best, each) => (each.value < best.value - 1e-9 ? each : best));
  const { at, value } = polished(cost, found);
  return {
    parameters: at.map((log) => Math.exp(log)),
    logLikelihood: -value,
    settled: at.every((log) => log > LEAST + NEAR && log < MOST - NEAR),
    spread: spreadAt(logLikelihoodAt, at),
  };
}

/**
 * The last digits by Newton's step: a simplex is content where the value no longer changes, at the square root of
 * its precision, and the parameters would differ from one machine to another in the sixth digit.
 */
function polished(cost: (logs: readonly number[]) => number, found: LowestPoint): LowestPoint {
  let best = found;
  for (let turn = 0; turn < 3; turn += 1) {
    const inverse = inverseOf(curvature(cost, best.at));
    if (inverse === undefined) return best;
    const slope = slopes(cost, best.at);
    const step = inverse.map((row) => row.reduce((sum, value, at) => sum + value * (slope[at] ?? 0), 0));
    const at = best.at.map((log, index) => log - (step[index] ?? 0));
    const value = cost(at);
    // a step that is far or leads up is no polish
    if (!step.every((it) => Math.abs(it) < 0.05) || !(value <= best.value + 1e-9)) return best;
    best = { at, value };
  }
  return best;
}
