import type { ExactMinor } from "#core/words";
import { countAtLeast } from "#kernels/statistics";
import { Fraction } from "fraction.js";
import { breakEvenHeads } from "../break-even.ts";
import {
  agreedRange,
  type PriceCurve,
  type PriceRange,
  priceCurve,
  type PriceSetting,
} from "../curve/price-curve.ts";
import { type SurveySummary, surveySummary } from "../curve/read-survey.ts";
import { type UncertainHeads, uncertainHeads } from "../heads/uncertain-heads.ts";
import { type DisplacedSingles, displacedSingles } from "../ladder/displaced-singles.ts";
import { ladderYield } from "../ladder/ladder-checks.ts";
import { type RiseSum, riseSum } from "../price-rise.ts";
import { type OwnOrStudio, ownOrStudio } from "../studio/own-or-studio.ts";
import { targetPrice } from "../target-price.ts";
import type { PriceQuestion } from "./price-question.ts";

/** Every figure of a price answer before it is written, in minor units. */
export type PriceSums = {
  readonly yield: ExactMinor;
  readonly margin: ExactMinor;
  readonly breakEven: number | null;
  readonly single: ExactMinor | null;
  readonly chanceFull: number;
  /** C ÷ E[min(D, K)] + v; null with nobody */
  readonly eveningPrice: ExactMinor | null;
  readonly displaced: DisplacedSingles | null;
  readonly heads: UncertainHeads;
  readonly rises: readonly RiseSum[];
  readonly target: { readonly yield: ExactMinor; readonly single: ExactMinor | null } | null;
  readonly curves: readonly PriceCurve[];
  readonly agreed: PriceRange | null;
  readonly survey: SurveySummary | null;
  readonly studio: OwnOrStudio | null;
};

export function priceSums(question: PriceQuestion): PriceSums {
  const { cost, perHead, tiers, demand, capacity, sessions } = question;
  const brings = ladderYield(tiers);
  const margin = brings.sub(perHead);
  const single = tiers.find(({ kind }) => kind === "single")?.perClass ?? null;
  const heads = uncertainHeads({ demand, capacity, margin, cost: new Fraction(cost), sessions });
  const expected = new Fraction(Math.round(heads.expectedHeads * 1e6), 1e6);
  const curves = curvesOf(question, brings, single);
  return {
    yield: brings,
    margin,
    single,
    breakEven: breakEvenHeads(cost, margin),
    chanceFull: countAtLeast(demand, capacity),
    eveningPrice: expected.equals(0) ? null : new Fraction(cost).div(expected).add(perHead),
    displaced: displacedSingles(tiers, demand, capacity),
    heads,
    rises: question.rises.map((rise) => riseSum(rise, tiers, brings, perHead)),
    target: targetOf(question, expected, brings, single),
    curves,
    agreed: agreedRange(curves),
    survey: surveySummary(question.survey),
    studio: studioOf(question, margin),
  };
}

/** At the people who can be expected in the hall, not at those who would like to come. */
function targetOf(
  { target, doorToDoor, cost, perHead }: PriceQuestion,
  heads: Fraction,
  brings: ExactMinor,
  single: ExactMinor | null,
): PriceSums["target"] {
  if (target === null || doorToDoor === null || heads.lte(0)) return null;
  const needed = targetPrice({ cost, minutes: doorToDoor, ...target, heads, perHead });
  const stays = single !== null && brings.gt(0);
  return { yield: needed, single: stays ? needed.mul(single).div(brings) : null };
}

function curvesOf(
  question: PriceQuestion,
  brings: ExactMinor,
  single: ExactMinor | null,
): readonly PriceCurve[] {
  const { curves, lookedAt, capacity, demand, perHead, cost } = question;
  if (lookedAt === null) return [];
  const setting: PriceSetting = {
    capacity,
    // a curve says how many on average, and a mean that is never missed would make corners in it
    dispersion: demand.kind === "varied" ? demand.dispersion : 1,
    perHead,
    cost,
    collected: single === null || single.equals(0) ? 1 : brings.div(single).valueOf(),
    ...lookedAt,
  };
  return curves.map((curve) => priceCurve(curve, setting));
}

function studioOf(
  { studio, doorToDoor, demand, capacity, cost }: PriceQuestion,
  margin: ExactMinor,
): OwnOrStudio | null {
  if (studio === null || doorToDoor === null) return null;
  return ownOrStudio({ demand, capacity, margin, cost: new Fraction(cost), minutes: doorToDoor }, studio);
}
