import { type CountModel, countAtLeast, expectedMinimum, expectedOver } from "#kernels/statistics";
import { Fraction } from "fraction.js";
import type { Tier } from "./tier.ts";

export type DisplacedSingles = {
  /** P(D ≥ K) */
  readonly chanceFull: number;
  /** E[(D − K)+] a session */
  readonly turnedAway: number;
  /** of those, the ones whose place a cheaper head has, a session */
  readonly displaced: number;
  /** what that costs a session, in minor units: displaced × (single − the average of the cheaper heads) */
  readonly costs: number;
};

/**
 * What cheaper heads cost when the hall is full: each takes the place of somebody who would have paid a single.
 * An upper side: it takes everybody turned away for a single and none of them for another day.
 * Null when there is no single price.
 */
export function displacedSingles(
  tiers: readonly Tier[],
  demand: CountModel,
  capacity: number,
): DisplacedSingles | null {
  const single = tiers.find(({ kind }) => kind === "single");
  if (single === undefined) return null;
  const cheaper = tiers.filter(({ share, perClass }) => share.gt(0) && perClass.lt(single.perClass));
  const share = cheaper.reduce((sum, tier) => sum.add(tier.share), new Fraction(0));
  const brings = cheaper.reduce((sum, tier) => sum.add(tier.share.mul(tier.perClass)), new Fraction(0));
  // no more singles can be displaced than cheaper heads are in a full hall
  const places = Number(share.mul(capacity).floor());
  const displaced = expectedMinimum(demand, capacity + places) - expectedMinimum(demand, capacity);
  const lost = share.equals(0) ? 0 : single.perClass.sub(brings.div(share)).valueOf();
  return {
    chanceFull: countAtLeast(demand, capacity),
    turnedAway: expectedOver(demand, capacity),
    displaced,
    costs: displaced * lost,
  };
}
