import type { CancelReason, Paid, PlaceKind, SessionNotice } from "./session-event.ts";

/*
 * One session with its people, as its events leave it:
 *   { class: "tuesday", date: "2026-12-01", capacity: 16, places: [{ id: "pl-1", person: "ana", state: "held", … }] }
 * Invariant: places held or attended, and those promised on the waiting list, are never more than the capacity
 * they were given under.
 */
export type PlaceState = "held" | "attended" | "given up early" | "given up late" | "not come";

export type Place = {
  readonly id: string;
  readonly person: string;
  readonly how: PlaceKind;
  readonly pass: string | null;
  /** whole minor units */
  readonly price: number;
  /** what came in for it, in order; what went back is below nought */
  readonly paid: readonly Paid[];
  readonly with: string | null;
  readonly state: PlaceState;
  /** a lateness that was let go */
  readonly waived: boolean;
  readonly walkedIn: boolean;
};

export type Waiting = {
  readonly entry: string;
  readonly person: string;
  readonly with: string | null;
  /** null: not offered; until null: the first to reply has it */
  readonly offer: { readonly until: string | null } | null;
};

export type CameOver = { readonly person: string; readonly paid: Paid | null; readonly why: string };

export type SessionState = {
  readonly class: string;
  readonly name: string;
  readonly date: string;
  /** ISO 8601 instant, UTC */
  readonly starts: string;
  readonly zone: string;
  readonly minutes: number;
  readonly hall: string | null;
  readonly capacity: number;
  readonly posted: number | null;
  readonly currency: string;
  readonly single: number;
  readonly concession: number;
  readonly notice: SessionNotice;
  readonly firstLateWaived: boolean;
  readonly cancelled: { readonly why: CancelReason; readonly movedTo: string | null } | null;
  readonly cover: { readonly by: string; readonly fee: number } | null;
  readonly places: readonly Place[];
  readonly waiting: readonly Waiting[];
  readonly cameOver: readonly CameOver[];
  /** the last head count, null before the first */
  readonly heads: number | null;
  readonly closed: boolean;
};

/** Whether a place takes a mat. One given up, or whose owner did not come, does not. */
export function takesMat(place: Pick<Place, "state">): boolean {
  return place.state === "held" || place.state === "attended";
}

/** Mats that nobody has and nobody was promised. */
export function freeMats({ capacity, places, waiting }: SessionState): number {
  const promised = waiting.filter(({ offer }) => offer !== null && offer.until !== null).length;
  return capacity - places.filter(takesMat).length - promised;
}

/** Whether a place is charged: it was used, or given up too late, or nobody came. */
export function isCharged({ state, waived }: Pick<Place, "state" | "waived">): boolean {
  return state === "attended" || state === "not come" || (state === "given up late" && !waived);
}

/** In minor units: what has come in for a place, less what went back. */
export function paidFor({ paid }: Pick<Place, "paid">): number {
  return paid.reduce((sum, { amount }) => sum + amount, 0);
}

/** What came in for a place and is still there goes back by the way in which it came last; null where nothing is. */
export function goesBack(place: Pick<Place, "paid">): Paid | null {
  const amount = paidFor(place);
  const last = place.paid.findLast((part) => part.amount > 0);
  return amount > 0 && last !== undefined ? { amount, by: last.by } : null;
}

export function placeIn(session: SessionState, id: string): Place | undefined {
  return session.places.find((place) => place.id === id);
}

/** The place a person has in a session, also one that was given up; the last one where there were several. */
export function placeOf(session: SessionState, person: string): Place | undefined {
  return session.places.findLast((place) => place.person === person);
}
