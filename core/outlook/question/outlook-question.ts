import type { CurrencyCode, ExactMinor, Minor } from "#core/words";
import type { Temporal } from "temporal-polyfill";
import type { SessionAhead } from "../ahead/look-ahead.ts";
import type { Remedies } from "../decide/second-class.ts";
import type { Evening } from "../decide/tonight.ts";
import type { HeldSession } from "../happened/held-session.ts";
import type { RollQuestion } from "../learning/learned-roll.ts";

/** What a person brings and a session costs. */
export type OutlookMoney = {
  readonly currency: CurrencyCode;
  readonly yielded: ExactMinor;
  readonly perHead: Minor;
  readonly cost: Minor;
  /** y − v */
  readonly margin: ExactMinor;
};

export type DatedSession = SessionAhead & { readonly date: Temporal.PlainDate | null };

export type Notice = {
  readonly days: number;
  readonly dates: readonly Temporal.PlainDate[];
  readonly term: number;
  readonly otherUse: Minor;
  readonly exitCost: Minor;
};

export type EveningChoice = {
  readonly evening: Evening;
  readonly booked: number | null;
  /** travel and her evening tonight, or the fee of who covers */
  readonly spent: Minor;
};

/** A sound outlook document. */
export type Outlook = {
  readonly roll: RollQuestion;
  readonly held: readonly HeldSession[];
  /** earlier sessions of a long record, which only say that the class was there before */
  readonly older: number;
  readonly ahead: readonly DatedSession[];
  readonly capacity: number;
  readonly money: OutlookMoney | null;
  readonly notice: Notice | null;
  readonly full: Remedies | null;
  readonly tonight: EveningChoice | null;
  readonly cover: EveningChoice | null;
  readonly season: "usual" | "given" | "none";
  readonly seed: number;
  readonly guesses: readonly string[];
};
