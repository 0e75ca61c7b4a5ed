import type { Problem } from "#core/words";
import type { ChangeJson } from "../change/change-json.ts";
import type { PartLine } from "../reply.ts";

/** Amounts are decimal strings to the coin, those for one class with two decimals more; chances and shares numbers between 0 and 1, null what was not asked. */
export type PriceJson = {
  readonly format: "hallful/price-answer@1";
  readonly sentences: readonly string[];
  readonly currency: string;
  readonly yield: string;
  readonly breakEven: number | null;
  readonly ladder: LadderJson;
  readonly courses: readonly CourseJson[];
  readonly monthly: MonthlyJson | null;
  readonly heads: HeadsJson;
  readonly rises: readonly RiseJson[];
  readonly target: TargetJson | null;
  readonly curve: CurveJson | null;
  readonly survey: {
    readonly count: number;
    readonly least: string;
    readonly median: string;
    readonly most: string;
  } | null;
  readonly studio: StudioJson | null;
  readonly changes: {
    readonly evening: readonly ChangeJson[];
    readonly studio: readonly ChangeJson[] | null;
  };
  readonly working: readonly PartLine[];
};

export type LadderJson = {
  readonly tiers: readonly {
    readonly key: string;
    readonly name: string;
    readonly price: string;
    readonly classes: number;
    readonly perClass: string;
    readonly share: number;
  }[];
  /** the key by which most people pay, and the one that brings least of those that are paid */
  readonly usual: string | null;
  readonly lowest: { readonly key: string; readonly perClass: string } | null;
  /** v + P(full) × single */
  readonly floor: string | null;
  /** C ÷ the people expected + v: what a class must bring; null with nobody */
  readonly eveningPrice: string | null;
  /** keys that people pay by and that bring less than that */
  readonly underEvening: readonly string[];
  readonly displaced: {
    readonly chanceFull: number;
    readonly turnedAway: number;
    readonly displaced: number;
    readonly costs: string;
  } | null;
  /** what is wrong with the ladder, in words */
  readonly findings: readonly Problem[];
};

export type CourseJson = {
  readonly key: string;
  readonly sessions: number;
  readonly price: string;
  readonly perSession: string;
  /** what it is a session, for who joins late, and what comes back for a session that is cancelled */
  readonly says: string;
  readonly lateJoiner: readonly { readonly remaining: number; readonly price: string }[];
  readonly refunds: readonly string[];
};

export type MonthlyJson = {
  readonly perSession: string;
  readonly sessions: number;
  readonly year: string;
  /** twelve, which add to the year */
  readonly payments: readonly string[];
  readonly says: string;
};

export type HeadsJson = {
  readonly expectedHeads: number;
  readonly chanceFull: number;
  readonly turnedAway: number;
  readonly expectedContribution: string;
  readonly contributionAtMean: string;
  readonly contributionAtCappedMean: string;
  readonly chanceOfLoss: number;
  readonly usualHeads: readonly [number, number];
  readonly worstQuarter: string;
  readonly chances: readonly {
    readonly heads: number;
    readonly chance: number;
    readonly contribution: string;
  }[];
  readonly term: {
    readonly sessions: number;
    readonly expectedContribution: string;
    readonly chanceOfLoss: number;
    readonly nineOfTen: string;
  };
};

export type LevelJson = {
  readonly from: string;
  readonly until: string;
  /** the share of those who pay it that can go; null when a head leaves nothing even then */
  readonly levelLoss: number | null;
  /** as people, of those who would like to come */
  readonly heads: number | null;
  readonly says: string;
};

export type RiseJson = {
  readonly rise: string;
  /** the single alone goes up; null when nobody pays it */
  readonly single: LevelJson | null;
  /** every price goes up by as much in proportion: from and until are what one person brings */
  readonly all: LevelJson | null;
};

export type TargetJson = {
  readonly perHour: string;
  readonly taxShare: number;
  /** what one person must bring; null when nobody can be expected */
  readonly yield: string | null;
  /** as a single, if the mix stays as it is */
  readonly single: string | null;
  readonly says: string;
};

export type CurvePartJson = {
  readonly kind: "constant elasticity" | "linear";
  /** per cent of the people lost for 1 % more; at the middle of the beliefs for a straight line */
  readonly elasticity: number;
  readonly best: { readonly price: string; readonly heads: number; readonly contribution: string };
  readonly range: { readonly from: string; readonly until: string } | null;
  readonly atEdge: "lowest" | "highest" | null;
  readonly points: readonly {
    readonly price: string;
    readonly heads: number;
    readonly contribution: string;
  }[];
};

export type CurveJson = {
  readonly curves: readonly CurvePartJson[];
  /** prices that are within 5 % of the best on both curves */
  readonly agreed: { readonly from: string; readonly until: string } | null;
};

export type PerHourJson = { readonly perSession: string; readonly perHour: string };

export type StudioJson = {
  readonly name: string;
  readonly own: PerHourJson;
  readonly studio: PerHourJson;
  readonly ownWorstQuarter: PerHourJson;
  readonly studioWorstQuarter: PerHourJson;
  readonly equalHeads: number | null;
  readonly chanceOwnIsBetter: number;
  readonly table: readonly { readonly heads: number; readonly perHour: string }[];
};
