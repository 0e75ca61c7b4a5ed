import type { BetaGeometric, BgBb, BgNbd, Fitted } from "#kernels/survival";

/** One person on one day, the day as 2027-04-06. */
export type Visit = { readonly person: string; readonly date: string };

/** Days from one to another, both in it, on which the class did not run. */
export type ClosedDays = { readonly from: string; readonly until: string };

export type Records = {
  readonly visits: readonly Visit[];
  /** the last day that counts; else the day of the last visit */
  readonly until?: string;
  readonly closed?: readonly ClosedDays[];
  /** take every week in which nobody at all came for one in which the class did not run */
  readonly emptyWeeksClosed?: boolean;
};

/** Somebody's days, first to last; at least one. Days are numbered from 1970-01-01. */
export type PersonSeen = { readonly person: string; readonly days: readonly number[] };

/**
 * A figure and the band that holds it four times of five, as far as the fitted parameters go. Of an expected number of
 * visits it is the band of the expectation: what one person then does varies more.
 */
export type Banded = { readonly value: number; readonly low: number; readonly high: number };

/** What the dates say of one person. Never a place in an order: lists are by name. */
export type PersonComing = {
  readonly person: string;
  readonly visits: number;
  readonly firstSeen: string;
  readonly lastSeen: string;
  /** whole teaching weeks since the last visit */
  readonly weeksSince: number;
  /** null where the records are too few, or where the person came once and the model has nothing to go by */
  readonly stillComing: Banded | null;
  /** the chance of at least one visit in the weeks ahead */
  readonly comesAgain: Banded | null;
  /** visits in the weeks ahead; by BG/BB weeks with a visit, which is the same for a weekly class */
  readonly expectedVisits: Banded | null;
};

export type ComingFit =
  | { readonly model: "bg-nbd"; readonly fitted: Fitted<BgNbd> }
  | { readonly model: "bg-bb"; readonly fitted: Fitted<BgBb> };

/** A point of the curve of those who stay: of all who began, the share that is still there. */
export type StayPoint = Banded & {
  readonly period: number;
  /** there just before it and watched */
  readonly atRisk: number;
  readonly stopped: number;
};

export type Period = "week" | "month" | "year";

/** How long people stay. A period is a teaching week, a month or a year. */
export type Stays = {
  readonly period: Period;
  /** not seen for so many periods is gone */
  readonly goneAfter: number;
  /** who began and was watched long enough to tell */
  readonly people: number;
  readonly stopped: number;
  readonly curve: readonly StayPoint[];
};

export type StaysFitted = Stays & {
  readonly fitted: Fitted<BetaGeometric>;
  /** the share expected to be there after 1, 2, 3 … periods */
  readonly expected: readonly number[];
};
