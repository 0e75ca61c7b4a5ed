import { bad, good, problem, type Problem, type Result } from "#core/words";
import { alreadyHeld, type PlaceAsked, sessionCancelled } from "./hold-place.ts";
import type { Paid, SessionEvent } from "./session-event.ts";
import { freeMats, type Place, placeIn, placeOf, type SessionState, takesMat } from "./session-state.ts";

/**
 * A place is marked on the register, or unmarked again ("held"). Somebody who was marked as not come and comes after
 * all needs a mat that is still free. Problems: "place-unknown", "place-given-up", "no-mat-left".
 */
export function markPlace(
  session: SessionState,
  id: string,
  as: "held" | "attended" | "not come",
): Result<readonly SessionEvent[]> {
  const place = placeIn(session, id);
  if (place === undefined) return bad(placeUnknown());
  if (isGivenUp(place)) return bad(placeGivenUp());
  if (place.state === as) return good([]);
  const needsMat = as !== "not come" && !takesMat(place);
  if (needsMat && freeMats(session) < 1) return bad(noMatLeft(session));
  return good([{ kind: "marked", place: id, as }]);
}

/**
 * Somebody comes to the door without a place. A mat that was promised on the waiting list is kept for who has the
 * promise. Problems: "session-cancelled", "place-already-held", "no-mat-left".
 */
export function walkIn(session: SessionState, asked: PlaceAsked): Result<readonly SessionEvent[]> {
  if (session.cancelled !== null) return bad(sessionCancelled(session));
  const place = placeOf(session, asked.person);
  if (place !== undefined && takesMat(place)) return bad(alreadyHeld());
  if (freeMats(session) < 1) return bad(noMatLeft(session));
  const held = { kind: "held", ...asked, with: null, entry: null, walkedIn: true } as const;
  return good([held, { kind: "marked", place: asked.place, as: "attended" }]);
}

/** Somebody was let in at a door without signal and by now no mat is left: it is written down, never dropped. */
export function cameOver(person: string, paid: Paid | null): SessionEvent {
  const why = "let in at the door while the last mat was taken elsewhere";
  return { kind: "came over", person, paid, why };
}

/** The register is closed: whoever was not marked did not come. Closing it again changes nothing. */
export function closeRegister(session: SessionState): readonly SessionEvent[] {
  if (session.closed || session.cancelled !== null) return [];
  const unmarked = session.places.filter(({ state }) => state === "held");
  return [
    ...unmarked.map(({ id }) => ({ kind: "marked", place: id, as: "not come" }) as const),
    { kind: "register closed" },
  ];
}

function isGivenUp({ state }: Place): boolean {
  return state === "given up early" || state === "given up late";
}

export function placeUnknown(): Problem {
  const says = "This session has no such place.";
  return problem("place-unknown", "place", says, "Load the register again and mark the name there.");
}

export function placeGivenUp(): Problem {
  const says = "This place was given up before.";
  return problem("place-given-up", "place", says, "If this person is here, write the name as a walk-in.");
}

function noMatLeft({ capacity }: SessionState): Problem {
  const says = `All ${capacity} mats of this session are taken.`;
  const next = "Let nobody in beyond that number; offer the next date.";
  return problem("no-mat-left", "session", says, next);
}
