import type { PassPromised, PassSold, PassTerms, PassUsed } from "./pass-event.ts";

/**
 * A pass as its events leave it. Plain JSON; never stored as the truth, always worked out from the events.
 *
 * Example: 10 sold, 4 used → { size: 10, left: 6, used: [4 uses], refunded: 0, expired: 0, … }.
 * Invariant: left = size − used − refunded − expired, and never below nought; no more places are promised
 * than classes are left; what came in is price − unpaid − let go, and what stays of it is that less what was paid back.
 */
export type PassState = {
  readonly pass: string;
  readonly form: PassSold["form"];
  readonly holder: string;
  readonly name: string;
  readonly size: number;
  readonly price: number;
  readonly currency: string;
  readonly valid: PassSold["valid"];
  /** the sessions of a block as they stand now, those swapped in included; empty for a pass */
  readonly sessions: readonly string[];
  readonly terms: PassTerms;
  readonly soldOn: string;
  readonly useBy: string;
  /** sessions ahead that a place is held in out of this pass */
  readonly promised: readonly PassPromise[];
  readonly used: readonly PassUse[];
  /** classes given up for money */
  readonly refunded: number;
  /** classes that ran out */
  readonly expired: number;
  readonly left: number;
  /** of the price, still to be paid */
  readonly unpaid: number;
  /** of the price, never to be paid: let go when classes were given back */
  readonly letGo: number;
  /** money paid out again */
  readonly paidBack: number;
  /** the first day of the pause that it is in */
  readonly pausedFrom: string | null;
  readonly pauses: number;
};

export type PassUse = Pick<PassUsed, "session" | "class" | "on" | "why">;

export type PassPromise = Pick<PassPromised, "session" | "class" | "on">;

/** Classes that no place is held for yet. */
export function freeOf({ left, promised }: Pick<PassState, "left" | "promised">): number {
  return left - promised.length;
}

/** Classes that are no longer owed, in whatever way they went. */
export function goneOf(state: PassState): number {
  return state.size - state.left;
}

/** What came in for it and was not paid back. */
export function moneyKept({ price, unpaid, letGo, paidBack }: PassState): number {
  return price - unpaid - letGo - paidBack;
}
