import { type CurrencyCode, exactNumberText, type ExactMinor, type Problem, problem } from "#core/words";
import { Fraction } from "fraction.js";
import { chanceText } from "../chance-text.ts";
import type { AmountWriter } from "../reply.ts";
import { payerInWords, payerName } from "../payer-key.ts";
import type { Tier } from "./tier.ts";

/** What the checks of a ladder need to know of its class. */
export type LadderFacts = {
  readonly currency: CurrencyCode;
  /** v, the cost per head */
  readonly perHead: ExactMinor;
  /** P(D ≥ K): how often a cheaper head takes the place of a single; between 0 and 1 */
  readonly chanceFull: number;
  /** nothing may be cheaper than what most people pay by more than this share; 0.25 unless told */
  readonly deepest: Fraction;
  readonly write: AmountWriter;
};

/** What is wrong with a ladder of prices, each in plain words with what to change. None when it holds. */
export function ladderChecks(tiers: readonly Tier[], facts: LadderFacts): readonly Problem[] {
  return [
    ...yieldChecks(tiers, facts),
    ...risingChecks(tiers, "pass", facts),
    ...risingChecks(tiers, "course", facts),
    ...floorChecks(tiers, facts),
    ...depthChecks(tiers, facts),
  ];
}

/** The single, then each pass or course from the smallest: a class must cost less each time. */
function risingChecks(
  tiers: readonly Tier[],
  kind: "pass" | "course",
  facts: LadderFacts,
): readonly Problem[] {
  const rungs = tiers
    .filter((tier) => tier.kind === kind || tier.kind === "single")
    .sort((a, b) => rungOrder(a) - rungOrder(b));
  return rungs.slice(1).flatMap((tier, index) => {
    const before = rungs[index];
    return before === undefined || tier.perClass.lt(before.perClass) ? [] : [rises(tier, before, facts)];
  });
}

function rungOrder({ kind, classes }: Tier): number {
  return kind === "single" ? 0 : classes;
}

function rises(tier: Tier, before: Tier, { write, currency }: LadderFacts): Problem {
  const each = write(tier.perClass, currency);
  const says = `${payerName(tier.key)} costs ${each} a class, no less than ${write(before.perClass, currency)} with ${payerInWords(before.key)}.`;
  const next = `Ask less than ${write(before.perClass.mul(tier.classes), currency)} for it, or leave it out.`;
  return problem("ladder-rises", tier.place, says, next);
}

/** v + P(full) · single: what a cheaper head must bring, since in a full hall it takes a single's place. */
export function ladderFloor(tiers: readonly Tier[], { perHead, chanceFull }: LadderFacts): ExactMinor | null {
  const single = tiers.find(({ kind }) => kind === "single");
  // a chance is a double; nine decimals of it are more than anybody knows
  const chance = new Fraction(Math.round(chanceFull * 1e9), 1e9);
  return single === undefined ? null : single.perClass.mul(chance).add(perHead);
}

function floorChecks(tiers: readonly Tier[], facts: LadderFacts): readonly Problem[] {
  const floor = ladderFloor(tiers, facts);
  if (floor === null) return [];
  const { write, currency } = facts;
  return tiers
    .filter(({ kind, least }) => kind !== "free" && kind !== "single" && least.lt(floor))
    .map((tier) => {
      const full = `the hall is full ${chanceText(facts.chanceFull)} of the time and a single is then turned away`;
      const says = `${payerName(tier.key)} brings ${write(tier.least, currency)} a class, under the ${write(floor, currency)} that a place is worth: ${full}.`;
      const next = `Ask at least ${write(floor.mul(tier.classes), currency)} for it, or limit how many places go so.`;
      return problem("ladder-below-floor", tier.place, says, next);
    });
}

/** The price a class that the largest part of the people pay; the dearer of two equal parts; null if nobody pays. */
export function usualPrice(tiers: readonly Tier[]): Tier | null {
  const paying = tiers.filter(({ kind, share }) => kind !== "free" && share.gt(0));
  return paying.reduce<Tier | null>((most, tier) => {
    if (most === null) return tier;
    const order = tier.share.compare(most.share);
    return order > 0 || (order === 0 && tier.perClass.gt(most.perClass)) ? tier : most;
  }, null);
}

/** Free places and what people choose themselves are meant to be cheap, so they are not held to this. */
function depthChecks(tiers: readonly Tier[], { deepest, write, currency }: LadderFacts): readonly Problem[] {
  const usual = usualPrice(tiers);
  if (usual === null) return [];
  const least = usual.perClass.mul(new Fraction(1).sub(deepest));
  return tiers
    .filter(({ kind, perClass }) => kind !== "free" && kind !== "pay-what-you-can" && perClass.lt(least))
    .map((tier) => {
      const share = exactNumberText(new Fraction(1).sub(tier.perClass.div(usual.perClass)).mul(100).round(1));
      const says = `${payerName(tier.key)} costs ${write(tier.perClass, currency)} a class, ${share} % less than what most people pay, ${write(usual.perClass, currency)}.`;
      const next = `Ask at least ${write(least.mul(tier.classes), currency)} for it, which is ${exactNumberText(deepest.mul(100))} % less.`;
      return problem("ladder-too-deep", tier.place, says, next);
    });
}

/** Σ share × per class. */
export function ladderYield(tiers: readonly Tier[]): ExactMinor {
  return tiers.reduce((sum, { share, perClass }) => sum.add(share.mul(perClass)), new Fraction(0));
}

function yieldChecks(tiers: readonly Tier[], { perHead, write, currency }: LadderFacts): readonly Problem[] {
  const brings = ladderYield(tiers);
  if (brings.gt(perHead)) return [];
  const says = `One person brings ${write(brings, currency)} on average and costs ${write(perHead, currency)}, so more people only lose more.`;
  return [
    problem(
      "yield-under-cost",
      "mix",
      says,
      "Raise the prices, give fewer free places or lower the cost per head.",
    ),
  ];
}
