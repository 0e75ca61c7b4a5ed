import { type CurrencyCode, type ExactMinor, exactText } from "#core/words";
import { Fraction } from "fraction.js";
import { headsAt } from "../curve/demand-curve.ts";
import type { PriceCurve } from "../curve/price-curve.ts";
import { type LadderFacts, ladderChecks, ladderFloor, usualPrice } from "../ladder/ladder-checks.ts";
import type { Tier } from "../ladder/tier.ts";
import { payerName } from "../payer-key.ts";
import { coinText } from "../reply.ts";
import type { PerHour } from "../studio/own-or-studio.ts";
import type {
  CurveJson,
  CurvePartJson,
  HeadsJson,
  LadderJson,
  PerHourJson,
  StudioJson,
} from "./price-json.ts";
import type { PriceQuestion } from "./price-question.ts";
import type { PriceSums } from "./price-sums.ts";

/** A double of minor units to the coin; halves of a coin go away from nought as everywhere. */
export function coins(amount: number, currency: CurrencyCode): string {
  const rounded = Math.sign(amount) * Math.round(Math.abs(amount));
  return coinText(new Fraction(rounded), currency);
}

export function ladderJson(question: PriceQuestion, sums: PriceSums, facts: LadderFacts): LadderJson {
  const { tiers, currency } = question;
  const text = (amount: ExactMinor): string => coinText(amount, currency);
  const floor = ladderFloor(tiers, facts);
  const lowest = lowestTier(tiers);
  const { displaced, eveningPrice } = sums;
  return {
    tiers: tiers.map((tier) => ({
      key: tier.key,
      name: payerName(tier.key),
      price: text(new Fraction(tier.price)),
      classes: tier.classes,
      perClass: exactText(tier.perClass, currency),
      share: tier.share.valueOf(),
    })),
    usual: usualPrice(tiers)?.key ?? null,
    lowest: lowest === null ? null : { key: lowest.key, perClass: exactText(lowest.perClass, currency) },
    floor: floor === null ? null : text(floor),
    eveningPrice: eveningPrice === null ? null : text(eveningPrice),
    underEvening: underEvening(tiers, eveningPrice).map(({ key }) => key),
    displaced: displaced === null ? null : { ...displaced, costs: coins(displaced.costs, currency) },
    findings: ladderChecks(tiers, facts),
  };
}

/** Of what people really pay by; free places are not on the ladder. */
export function lowestTier(tiers: readonly Tier[]): Tier | null {
  const paying = tiers.filter(({ kind, share }) => kind !== "free" && share.gt(0));
  return paying.reduce<Tier | null>(
    (low, tier) => (low === null || tier.perClass.lt(low.perClass) ? tier : low),
    null,
  );
}

export function underEvening(tiers: readonly Tier[], eveningPrice: ExactMinor | null): readonly Tier[] {
  if (eveningPrice === null) return [];
  return tiers.filter(
    ({ kind, share, perClass }) => kind !== "free" && share.gt(0) && perClass.lt(eveningPrice),
  );
}

export function headsJson({ heads }: PriceSums, currency: CurrencyCode): HeadsJson {
  return {
    ...heads,
    expectedContribution: coins(heads.expectedContribution, currency),
    contributionAtMean: coins(heads.contributionAtMean, currency),
    contributionAtCappedMean: coins(heads.contributionAtCappedMean, currency),
    worstQuarter: coins(heads.worstQuarter, currency),
    chances: heads.chances.map((it) => ({ ...it, contribution: coinText(it.contribution, currency) })),
    term: {
      ...heads.term,
      expectedContribution: coins(heads.term.expectedContribution, currency),
      nineOfTen: coins(heads.term.nineOfTen, currency),
    },
  };
}

export function curveJson(sums: PriceSums, question: PriceQuestion): CurveJson | null {
  const { currency } = question;
  if (sums.curves.length === 0) return null;
  const { agreed } = sums;
  return {
    curves: sums.curves.map((curve) => curvePart(curve, question)),
    agreed:
      agreed === null ? null : { from: coins(agreed.from, currency), until: coins(agreed.until, currency) },
  };
}

function curvePart(
  { curve, best, range, atEdge, points }: PriceCurve,
  question: PriceQuestion,
): CurvePartJson {
  const { currency } = question;
  const text = (amount: number): string => coins(amount, currency);
  const at = (it: PriceCurve["best"]) => ({
    price: text(it.price),
    heads: it.heads,
    contribution: text(it.contribution),
  });
  return {
    kind: curve.kind,
    elasticity:
      curve.kind === "linear"
        ? (curve.slope * middle(question)) / headsAt(curve, middle(question))
        : curve.elasticity,
    best: at(best),
    range: range === null ? null : { from: text(range.from), until: text(range.until) },
    atEdge,
    points: points.map(at),
  };
}

/** A straight line has another elasticity at every price: told at the mean of the prices of the beliefs. */
function middle({ points }: PriceQuestion): number {
  return points.reduce((sum, { price }) => sum + price, 0) / points.length;
}

export function studioJson(
  { studio: sums }: PriceSums,
  { studio, currency }: PriceQuestion,
): StudioJson | null {
  if (sums === null || studio === null) return null;
  const hour = ({ perSession, perHour }: PerHour): PerHourJson => {
    return { perSession: coins(perSession, currency), perHour: coins(perHour, currency) };
  };
  return {
    name: studio.name,
    own: hour(sums.own),
    studio: hour(sums.studio),
    ownWorstQuarter: hour(sums.ownWorstQuarter),
    studioWorstQuarter: hour(sums.studioWorstQuarter),
    equalHeads: sums.equalHeads,
    chanceOwnIsBetter: sums.chanceOwnIsBetter,
    table: sums.table.map(({ heads, perHour }) => ({ heads, perHour: coinText(perHour, currency) })),
  };
}
