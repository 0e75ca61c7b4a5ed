import { bad, good, type Problem, problem, type Result } from "#core/words";
import { closedProblems, type PlaceAsked } from "./hold-place.ts";
import type { SessionEvent } from "./session-event.ts";
import { freeMats, type SessionState } from "./session-state.ts";

/**
 * Somebody on the waiting list takes the place that was offered. Two who wait together answer each for her own, and
 * hold each other's company while both take theirs.
 * Problems: "session-cancelled", "session-over", "not-waiting", "not-offered", "offer-over", "place-gone".
 */
export function acceptOffer(
  session: SessionState,
  entry: string,
  asked: PlaceAsked,
  now: string,
): Result<readonly SessionEvent[]> {
  const closed = closedProblems(session, now);
  if (closed.length > 0) return bad(...closed);
  const found = session.waiting.find((it) => it.entry === entry);
  if (found === undefined) return bad(notWaiting());
  if (found.offer === null) return bad(notOffered());
  if (found.offer.until !== null && found.offer.until < now) return bad(offerOver());
  if (found.offer.until === null && freeMats(session) < 1) return bad(placeGone());
  return good([{ kind: "held", ...asked, with: found.with, entry, walkedIn: false }]);
}

/** Somebody leaves the waiting list, with or without an offer. Problem: "not-waiting". */
export function leaveWaiting(session: SessionState, entry: string): Result<readonly SessionEvent[]> {
  const found = session.waiting.find((it) => it.entry === entry);
  if (found === undefined) return bad(notWaiting());
  return good([{ kind: "stopped waiting", entry, why: found.offer === null ? "withdrawn" : "declined" }]);
}

export function notWaiting(): Problem {
  const says = "This person does not wait for this session any more.";
  return problem("not-waiting", "entry", says, "Ask for a place anew.");
}

function notOffered() {
  const says = "No place was offered yet to this person.";
  return problem("not-offered", "entry", says, "Nothing is lost: the turn on the list is kept.");
}

function offerOver() {
  const says = "The time to answer this offer is over, and the place went on to the next on the list.";
  return problem("offer-over", "entry", says, "Ask for a place anew to go back on the list.");
}

function placeGone() {
  const says = "Somebody else replied first and has the place.";
  return problem("place-gone", "entry", says, "Nothing was charged; the turn on the list is kept.");
}
