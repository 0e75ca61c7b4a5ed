import type { CurrencyCode, Minor } from "#core/words";
import type { Fraction } from "fraction.js";
import type { Temporal } from "temporal-polyfill";
import type { TaxQuestion } from "./tax/tax-types.ts";

/**
 * Takings between 60.00 and 100.00 pounds a session, 80.00 in the middle: { low: 6000, middle: 8000, high: 10000 }.
 * low ≤ middle ≤ high; eight chances of ten lie between. A figure that is known has three alike.
 */
export type Spread = { readonly low: Minor; readonly middle: Minor; readonly high: Minor };

/** What is looked at: every uncertain figure at its low, its middle or its high at once. */
export type Case = keyof Spread;
export const cases = ["low", "middle", "high"] as const;

export type PaidTerms = {
  readonly when: "on-the-day" | "days-after" | "after-month" | "before-month";
  readonly days: number;
};

export type SessionCost = {
  readonly name: string;
  readonly perSession: Minor;
  readonly paid: PaidTerms;
  readonly business: boolean;
};

export type Passes = { readonly share: Fraction; readonly sessions: number; readonly owed: Minor };

/** Something she teaches: its dates in order, and what each session brings from when on. */
export type Work = {
  readonly id: string;
  readonly name: string;
  readonly kind: string;
  readonly dates: readonly Temporal.PlainDate[];
  /** in order of their dates; the first holds from ever */
  readonly brings: readonly { readonly from: string; readonly spread: Spread }[];
  readonly passes: Passes | null;
  readonly paid: PaidTerms;
  readonly costs: readonly SessionCost[];
};

export type Move = {
  readonly name: string;
  readonly way: "in" | "out";
  readonly amount: Spread;
  readonly dates: readonly string[];
  readonly business: boolean;
};

export type Droppable = {
  /** position in the list of work */
  readonly work: number;
  readonly hours: number;
  readonly noticeWeeks: number;
};

export type PathQuestion = {
  readonly need: Minor;
  readonly level: number;
  readonly window: number;
  readonly together: number;
  readonly mayDrop: readonly Droppable[];
};

/** The money of a year as sound values; `until` is its last day. */
export type MoneyYear = {
  readonly currency: CurrencyCode;
  readonly from: Temporal.PlainDate;
  readonly until: Temporal.PlainDate;
  readonly opening: Minor;
  readonly work: readonly Work[];
  readonly moves: readonly Move[];
  readonly tax: TaxQuestion | null;
  readonly path: PathQuestion | null;
  readonly guesses: readonly string[];
};

/** What a session of that day brings. */
export function bringsOn(work: Work, date: string): Spread {
  const found = work.brings.findLast(({ from }) => from <= date);
  if (found === undefined) throw new RangeError(`nothing said for ${date}`);
  return found.spread;
}
