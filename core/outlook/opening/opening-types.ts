import type { Accepting } from "./accept-at-most.ts";
import type { CostView, NightOutlook, OpeningCosts } from "./cost-view.ts";
import type { Happened, LearnedShare } from "./learned-shares.ts";
import type { Stayer, StayerWorth } from "./stayer-worth.ts";

/** What limits the people who take part. */
export type Limit = "mats" | "own cap" | "insurer" | "posted number";

/** A sound opening. */
export type Opening = {
  readonly accepting: Accepting;
  readonly limit: Limit;
  readonly costs: OpeningCosts | null;
  readonly happened: Happened | null;
  readonly returns: number;
  readonly stayer: Stayer | null;
  readonly guesses: readonly string[];
};

export type LearnedOpening = {
  readonly turnUp: LearnedShare;
  readonly returns: LearnedShare | null;
  /** what to accept at another opening like it */
  readonly acceptNext: number;
};

/** What was worked out for it. */
export type OpeningFound = {
  readonly accept: number;
  /** the number if each decided alone */
  readonly alone: number;
  readonly nights: readonly NightOutlook[];
  /** with what is accepted, and with one more */
  readonly night: NightOutlook;
  readonly next: NightOutlook;
  readonly waiting: readonly number[];
  readonly byCost: CostView | null;
  readonly learned: LearnedOpening | null;
  readonly worth: StayerWorth | null;
};
