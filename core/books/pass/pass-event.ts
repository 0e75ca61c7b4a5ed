import type { Means } from "../posting/account.ts";

/**
 * What happens to a pass of classes or to a block, one event after another; `on` is the day in the hall's
 * zone. Money is whole minor units. A pause has no place for a reason: why somebody stays away is nobody's
 * business in the books.
 *
 * Example: sold 10 for 8500 → used → used → paused → resumed → refunded.
 */
export type PassEvent =
  | PassSold
  | PassPromised
  | PassFreed
  | PassUsed
  | PassReturned
  | PassSwapped
  | PassPaid
  | PassPaused
  | PassResumed
  | PassExtended
  | PassTransferred
  | PassRefunded
  | PassExpired;

export type PassSold = {
  readonly kind: "sold";
  readonly on: string;
  readonly pass: string;
  /** a block is bought for a list of sessions, a pass for any */
  readonly form: "pass" | "block";
  readonly holder: string;
  readonly name: string;
  /** classes in it; for a block as many as it has sessions */
  readonly size: number;
  readonly price: number;
  readonly currency: string;
  readonly paid: Means | "later";
  /** the last day on which it counts */
  readonly useBy: string;
  /** ids of the classes it is good for */
  readonly valid: "all" | readonly string[];
  /** the sessions of a block; empty for a pass */
  readonly sessions: readonly string[];
  readonly terms: PassTerms;
};

export type PassTerms = {
  /** what a class taken counts when the rest is given back, usually the single price; null is by equal shares */
  readonly perClassOnRefund: number | null;
  readonly transferable: boolean;
  /** how often it may be paused; null is as often as asked */
  readonly pauses: number | null;
};

/** A place is held out of the pass: a class of it is spoken for, and not yet taken off. `on` is the session's day. */
export type PassPromised = {
  readonly kind: "promised";
  readonly on: string;
  readonly session: string;
  readonly class: string;
};

/** A place that was held out of the pass is not needed after all; nothing was taken off. */
export type PassFreed = { readonly kind: "freed"; readonly on: string; readonly session: string };

/** A class is taken off: the holder came, gave up late or did not come. `on` is the day of the session. */
export type PassUsed = {
  readonly kind: "used";
  readonly on: string;
  readonly session: string;
  readonly class: string;
  readonly why: "attended" | "late" | "not-come";
};

/** A class taken off comes back: the session was cancelled after all, the lateness let go, or a slip mended. */
export type PassReturned = {
  readonly kind: "returned";
  readonly on: string;
  readonly session: string;
  readonly why: "cancelled" | "kindness" | "mistake";
};

/** A session of a block is taken on another date, or in another class. */
export type PassSwapped = {
  readonly kind: "swapped";
  readonly on: string;
  readonly from: string;
  readonly to: string;
};

/** Money for a pass that was to be paid later, whole or in part. */
export type PassPaid = {
  readonly kind: "paid";
  readonly on: string;
  readonly amount: number;
  readonly how: Means;
};

export type PassPaused = { readonly kind: "paused"; readonly on: string; readonly from: string };

export type PassResumed = { readonly kind: "resumed"; readonly on: string; readonly useBy: string };

/** A later use-by; classes that had run out are there again, since a kindness may come after the day. */
export type PassExtended = {
  readonly kind: "extended";
  readonly on: string;
  readonly useBy: string;
  readonly why: "closure" | "kindness";
  /** the session that was closed */
  readonly session?: string;
};

export type PassTransferred = { readonly kind: "transferred"; readonly on: string; readonly to: string };

/** So many classes are given up for an amount; what is still unpaid is let go first, the rest is paid out. */
export type PassRefunded = {
  readonly kind: "refunded";
  readonly on: string;
  readonly classes: number;
  readonly amount: number;
  readonly how: Means;
  /** the sessions of a block that are given up */
  readonly sessions?: readonly string[];
};

export type PassExpired = { readonly kind: "expired"; readonly on: string; readonly classes: number };
