import type { WorkingLine } from "#core/price";
import type { ExactMinor, Minor } from "#core/words";

export type YearMonth = {
  /** "2027-01" */
  readonly month: string;
  readonly sessions: number;
  readonly hire: Minor;
  readonly contribution: ExactMinor;
};

export type SessionsAtCost = { readonly cost: Minor; readonly sessions: number };

/** A year of one class by its real teaching dates. */
export type ClassYear = {
  readonly from: string;
  readonly until: string;
  /** ISO dates on which the class runs */
  readonly dates: readonly string[];
  /** ISO dates of its weekday that a closure takes, with the reason */
  readonly lost: readonly { readonly date: string; readonly why: string }[];
  readonly months: readonly YearMonth[];
  /** how many sessions cost how much, in the order in which each cost first comes */
  readonly costs: readonly SessionsAtCost[];
  readonly contribution: ExactMinor;
  readonly fixed: Minor;
  /** what one person leaves on one evening: yield less cost per head */
  readonly margin: ExactMinor;
  /** contribution − fixed */
  readonly leaves: ExactMinor;
  readonly working: readonly WorkingLine[];
};
