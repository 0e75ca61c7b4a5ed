import { type BetaGeometric, betaGeometricLogLikelihood, type Cohort } from "./beta-geometric.ts";
import { type Fitted, mostLikely } from "./fitted.ts";

/**
 * The beta-geometric that fits groups best. Where nobody ended, or nobody stayed, it runs to the end of what is
 * looked at and is not settled. Throws when nobody was watched through a period.
 */
export function fitBetaGeometric(cohorts: readonly Cohort[]): Fitted<BetaGeometric> {
  const periods = cohorts.some(
    (it) => it.ended.length > 0 && it.still + it.ended.reduce((a, b) => a + b, 0) > 0,
  );
  if (!periods) throw new RangeError(`cohorts without a period: ${cohorts.length}`);
  const found = mostLikely(
    ([alpha = 0, beta = 0]) => betaGeometricLogLikelihood({ alpha, beta }, cohorts),
    [
      [1, 1],
      [0.5, 20],
    ],
  );
  const [alpha = 0, beta = 0] = found.parameters;
  return { ...found, parameters: { alpha, beta } };
}
