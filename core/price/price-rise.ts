import type { ExactMinor, Minor } from "#core/words";
import { Fraction } from "fraction.js";
import type { Tier } from "./ladder/tier.ts";

/**
 * The share of heads that a price rise can lose and leave the evening as it was: Δ ÷ (p + Δ − v). From 9.00 to
 * 10.00 with 0.20 a head it is 1.00 ÷ 9.80, 10.2 %. Null when a head leaves nothing even after the rise: then no
 * share is level. Method: trade F9.
 */
export function levelLoss(price: ExactMinor, rise: ExactMinor, perHead: ExactMinor): Fraction | null {
  const margin = price.add(rise).sub(perHead);
  return margin.lte(0) ? null : new Fraction(rise).div(margin);
}

/** A price or a yield that goes up, and the share of those who pay it that may go; above 1 where each lost money. */
export type Rise = {
  readonly from: ExactMinor;
  readonly until: ExactMinor;
  readonly loss: Fraction | null;
  /** of the people on the mats, who pays it */
  readonly share: Fraction;
};

/** A rise of the single alone, and of every price by as much in proportion. */
export type RiseSum = {
  readonly rise: Minor;
  /** null when there is no single price, or nobody pays it */
  readonly single: Rise | null;
  /** what one person brings; null when there is no single above nought to measure the rise by */
  readonly all: Rise | null;
};

/** What each kind of rise may lose: the single's own p, and the yield of the whole mix. Minor units. */
export function riseSum(rise: Minor, tiers: readonly Tier[], brings: ExactMinor, perHead: Minor): RiseSum {
  const single = tiers.find(({ kind }) => kind === "single");
  const of = (from: ExactMinor, until: ExactMinor, share: Fraction): Rise => {
    return { from, until, share, loss: levelLoss(from, until.sub(from), new Fraction(perHead)) };
  };
  if (single === undefined) return { rise, single: null, all: null };
  const { perClass, share } = single;
  return {
    rise,
    single: share.equals(0) ? null : of(perClass, perClass.add(rise), share),
    all: perClass.equals(0)
      ? null
      : of(brings, brings.mul(perClass.add(rise)).div(perClass), new Fraction(1)),
  };
}
