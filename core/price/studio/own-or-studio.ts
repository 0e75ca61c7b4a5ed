import type { ExactMinor, Minor } from "#core/words";
import { type CountModel, cappedCount, type Distribution, meanOfLowest } from "#kernels/statistics";
import { Fraction } from "fraction.js";
import { breakEvenHeads } from "../break-even.ts";
import { type StudioPay, studioPay } from "./studio-pay.ts";

export type OwnClass = {
  readonly demand: CountModel;
  readonly capacity: number;
  /** y − v, in minor units */
  readonly margin: ExactMinor;
  /** C, in minor units */
  readonly cost: ExactMinor;
  /** from her door to her door, above 0 */
  readonly minutes: number;
};

export type StudioClass = {
  readonly pay: StudioPay;
  readonly demand: CountModel;
  readonly capacity: number;
  /** what getting there and back costs her, in minor units */
  readonly travelCost: Minor;
  /** from her door to her door, above 0 */
  readonly minutes: number;
};

export type PerHour = {
  /** minor units a session, and for an hour from door to door */
  readonly perSession: number;
  readonly perHour: number;
};

export type OwnOrStudio = {
  readonly own: PerHour;
  readonly studio: PerHour;
  /** over the worst quarter of the evenings of each */
  readonly ownWorstQuarter: PerHour;
  readonly studioWorstQuarter: PerHour;
  /** the fewest people with whom her own class earns at least the studio's hour; null is never */
  readonly equalHeads: number | null;
  /** how often her own class has that many; between 0 and 1 */
  readonly chanceOwnIsBetter: number;
  /** her own hour with 0 … capacity people, exact, in minor units */
  readonly table: readonly { readonly heads: number; readonly perHour: ExactMinor }[];
};

/** Her own class against the studio's, each for an hour from door to door. Minutes above 0. Method: trade F4. */
export function ownOrStudio(own: OwnClass, studio: StudioClass): OwnOrStudio {
  checkMinutes(own.minutes);
  checkMinutes(studio.minutes);
  const ownHeads = cappedCount(own.demand, own.capacity);
  const studioHeads = cappedCount(studio.demand, studio.capacity);
  const ownOf = (heads: number): number => own.margin.mul(heads).sub(own.cost).valueOf();
  const studioOf = (heads: number): number => studioPay(studio.pay, heads).valueOf() - studio.travelCost;
  const mean = perHour(meanOfLowest(studioHeads, 1, studioOf), studio.minutes);
  const equalHeads = equalHeadsOf(own, studio, mean.perSession);
  return {
    own: perHour(meanOfLowest(ownHeads, 1, ownOf), own.minutes),
    studio: mean,
    ownWorstQuarter: perHour(worstQuarter(ownHeads, ownOf), own.minutes),
    studioWorstQuarter: perHour(worstQuarter(studioHeads, studioOf), studio.minutes),
    equalHeads,
    chanceOwnIsBetter: equalHeads === null ? 0 : chanceFrom(ownHeads, equalHeads),
    table: ownHeads.map((_, heads) => {
      return { heads, perHour: own.margin.mul(heads).sub(own.cost).mul(60).div(own.minutes) };
    }),
  };
}

/** A class whose people cost more than they bring is worst when it is full. */
function worstQuarter(heads: Distribution, valueOf: (heads: number) => number): number {
  const most = heads.length - 1;
  return valueOf(most) >= valueOf(0)
    ? meanOfLowest(heads, 0.25, valueOf)
    : meanOfLowest(heads.toReversed(), 0.25, (count) => valueOf(most - count));
}

function perHour(perSession: number, minutes: number): PerHour {
  return { perSession, perHour: (perSession * 60) / minutes };
}

/**
 * Least n with (n·m − C) ÷ own minutes ≥ studio ÷ studio minutes. The studio's mean is a double; a millionth of
 * a coin is dropped so that a tie in exact amounts stays a tie.
 */
function equalHeadsOf(own: OwnClass, studio: StudioClass, studioMean: number): number | null {
  const mean = new Fraction(Math.round(studioMean * 1e6), 1e6);
  const needed = mean.mul(own.minutes).div(studio.minutes).add(own.cost);
  const heads = breakEvenHeads(needed, own.margin);
  return heads === null ? null : Math.max(0, heads);
}

function chanceFrom(heads: Distribution, least: number): number {
  return heads.slice(least).reduce((sum, chance) => sum + chance, 0);
}

function checkMinutes(minutes: number): void {
  if (!(minutes > 0)) throw new RangeError(`minutes: ${minutes}`);
}
