import type { HireTerms } from "#core/hall";
import type { CurrencyCode, ExactMinor, Minor, Minutes } from "#core/words";
import type { DateSpan } from "#kernels/calendar";
import type { CountModel } from "#kernels/statistics";
import type { ClosedSpan } from "../pass/use-by-date.ts";

/** Minutes of a day from midnight: 18:30 is 1110. */
export type FreeSpan = { readonly weekday: number; readonly from: number; readonly until: number };
export type Slot = { readonly weekday: number; readonly start: number; readonly said: string };

/** A way for the mats to stand, and the people on mats that it takes; without a name where there is one way only. */
export type Way = { readonly name: string | null; readonly capacity: number };

export type ComparedHall = {
  readonly name: string;
  readonly ways: readonly Way[];
  readonly hire: HireTerms;
  readonly travelMinutes: Minutes;
  readonly travelCost: Minor;
  /** null when nobody has said when it is free */
  readonly free: readonly FreeSpan[] | null;
  readonly terms: readonly DateSpan[] | null;
  readonly closures: readonly ClosedSpan[];
};

export type Comparison = {
  readonly currency: CurrencyCode;
  readonly slots: readonly Slot[];
  readonly minutes: { readonly setUp: Minutes; readonly class: Minutes; readonly packDown: Minutes };
  readonly year: DateSpan;
  readonly closures: readonly ClosedSpan[];
  readonly otherCost: Minor;
  /** y − v, in minor units */
  readonly margin: ExactMinor;
  readonly demand: CountModel;
  readonly halls: readonly ComparedHall[];
};

/** One hall, with its mats one way, at one time of the week, with what its year costs whoever comes. */
export type Candidate = {
  /** index of the hall in the document */
  readonly hall: number;
  readonly name: string;
  readonly slot: Slot;
  readonly way: string | null;
  /** "Quay Street Mission Room (in lines, Tuesday 18:30)": the way and the time where there is more than one */
  readonly said: string;
  readonly capacity: number;
  readonly sessions: number;
  /** dates of its weekday in the year that are lost, by reason: 3 to half-term, 4 outside its terms */
  readonly lostTo: readonly LostTo[];
  /** hire, travel and other costs of all its sessions, in minor units */
  readonly yearCost: number;
  /** from her door to her door */
  readonly doorToDoor: number;
  readonly freeIsStated: boolean;
};

export type LostTo = { readonly why: string; readonly dates: number };

export type Excluded = { readonly hall: number; readonly said: string; readonly why: string };

/** What a candidate leaves, in minor units: a session on average over its year, a year, an hour door to door. */
export type Leaves = {
  readonly heads: number;
  readonly perSession: number;
  readonly perYear: number;
  readonly perHour: number;
};

export type HallLine = {
  readonly candidate: Candidate;
  /** the same people want to come to each; the capacity turns some away */
  readonly expected: Leaves;
  /** as many as it takes */
  readonly full: Leaves;
};
