import type { ExactMinor } from "#core/words";
import {
  type CountModel,
  cappedCount,
  convolveTimes,
  countAtLeast,
  type Distribution,
  expectedOver,
  meanOf,
  meanOfLowest,
  quantileOf,
} from "#kernels/statistics";
import { breakEvenHeads } from "../break-even.ts";

/** 9 people on average, at most 14, 8.00 left by each, an evening of 31.40, twelve evenings. */
export type UncertainEvening = {
  readonly demand: CountModel;
  readonly capacity: number;
  /** y − v, in minor units */
  readonly margin: ExactMinor;
  /** C, in minor units */
  readonly cost: ExactMinor;
  /** evenings of a term */
  readonly sessions: number;
};

export type HeadsChance = {
  readonly heads: number;
  readonly chance: number;
  /** n(y − v) − C, in minor units */
  readonly contribution: ExactMinor;
};

export type UncertainHeads = {
  /** every number of people that can be on the mats, 0 to capacity */
  readonly chances: readonly HeadsChance[];
  readonly chanceFull: number;
  readonly expectedHeads: number;
  readonly turnedAway: number;
  /** Σ chance × contribution, in minor units */
  readonly expectedContribution: number;
  /** what the formula makes of the mean alone, and of the mean cut off at the capacity, in minor units */
  readonly contributionAtMean: number;
  readonly contributionAtCappedMean: number;
  readonly chanceOfLoss: number;
  /** eight evenings of ten have at least the first and at most the second */
  readonly usualHeads: readonly [number, number];
  /** the mean of the worst quarter of the evenings, in minor units */
  readonly worstQuarter: number;
  readonly term: TermChance;
};

export type TermChance = {
  readonly sessions: number;
  readonly expectedContribution: number;
  /** that the evenings together cost more than they bring */
  readonly chanceOfLoss: number;
  /** nine terms of ten leave at least this, in minor units */
  readonly nineOfTen: number;
};

/**
 * What an evening and a term leave when the number of people is not known: the whole distribution under the
 * hall's capacity, not the mean pushed through the formula. Evenings are taken as independent of each other; a
 * term whose evenings go up and down together is less certain than this.
 */
export function uncertainHeads(evening: UncertainEvening): UncertainHeads {
  const { demand, capacity, margin, cost, sessions } = evening;
  const heads = cappedCount(demand, capacity);
  const of = (count: number): number => margin.valueOf() * count - cost.valueOf();
  return {
    chances: heads.map((chance, count) => ({
      heads: count,
      chance,
      contribution: margin.mul(count).sub(cost),
    })),
    chanceFull: countAtLeast(demand, capacity),
    expectedHeads: meanOf(heads),
    turnedAway: expectedOver(demand, capacity),
    expectedContribution: of(meanOf(heads)),
    contributionAtMean: of(demand.mean),
    contributionAtCappedMean: of(Math.min(demand.mean, capacity)),
    chanceOfLoss: chanceOfLoss(heads, margin, cost),
    usualHeads: [quantileOf(heads, 0.1), quantileOf(heads, 0.9)],
    worstQuarter: of(worstQuarterHeads(heads, margin)),
    term: termChance(heads, margin, cost, sessions),
  };
}

/** With a margin below nought the worst evenings are the full ones. */
function worstQuarterHeads(heads: Distribution, margin: ExactMinor): number {
  if (margin.gte(0)) return meanOfLowest(heads, 0.25);
  return heads.length - 1 - meanOfLowest(heads.toReversed(), 0.25);
}

/** The costs of all evenings against what all heads leave; the sum of the heads decides, exactly. */
function termChance(heads: Distribution, margin: ExactMinor, cost: ExactMinor, sessions: number): TermChance {
  const term = convolveTimes(heads, sessions);
  const costs = cost.mul(sessions);
  const nine = margin.gte(0) ? quantileOf(term, 0.1) : quantileOf(term, 0.9);
  return {
    sessions,
    expectedContribution: margin.valueOf() * meanOf(term) - costs.valueOf(),
    chanceOfLoss: chanceOfLoss(term, margin, costs),
    nineOfTen: margin.mul(nine).sub(costs).valueOf(),
  };
}

/** P(n(y − v) < C), the counts that lose picked by exact fractions. */
function chanceOfLoss(heads: Distribution, margin: ExactMinor, cost: ExactMinor): number {
  const enough = breakEvenHeads(cost, margin);
  const losing =
    enough === null
      ? heads.filter((_, count) => margin.mul(count).lt(cost))
      : heads.slice(0, Math.max(0, enough));
  return Math.min(
    1,
    losing.reduce((sum, chance) => sum + chance, 0),
  );
}
