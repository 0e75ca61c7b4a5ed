import { bad, good, problem, type Problem, type Result } from "#core/words";
import type { Paid, PlaceKind, SessionEvent } from "./session-event.ts";
import { freeMats, placeOf, type SessionState, takesMat, type Waiting } from "./session-state.ts";

export type PlaceAsked = {
  /** ids for the place, or for the entry of the waiting list, made by whoever asks */
  readonly place: string;
  readonly person: string;
  readonly how: PlaceKind;
  readonly pass: string | null;
  readonly price: number;
  readonly paid: Paid | null;
};

export type Held = { readonly outcome: "held" | "waiting"; readonly events: readonly SessionEvent[] };

/**
 * One person, or two who come together, ask for a place: both have one or both wait. Whoever waits already goes
 * first, so a free mat that is owed to the list is not given away. The list is settled before this is asked.
 * Problems: "session-cancelled", "session-over", "place-already-held", "already-waiting".
 */
export function holdPlaces(
  session: SessionState,
  asked: readonly [PlaceAsked] | readonly [PlaceAsked, PlaceAsked],
  now: string,
): Result<Held> {
  const problems = [...closedProblems(session, now), ...asked.flatMap((it) => personProblems(session, it))];
  if (problems.length > 0) return bad(...problems);
  const before = session.waiting.filter(({ offer }) => offer === null || offer.until === null).length;
  const room = freeMats(session) >= asked.length && before === 0;
  return good(
    room
      ? { outcome: "held", events: asked.map((it) => held(it, partner(asked, it))) }
      : { outcome: "waiting", events: asked.map((it) => waiting(it, partner(asked, it))) },
  );
}

function partner(asked: readonly PlaceAsked[], it: PlaceAsked): string | null {
  return asked.find((other) => other !== it)?.place ?? null;
}

function held(it: PlaceAsked, withPlace: string | null): SessionEvent {
  return { kind: "held", ...it, with: withPlace, entry: null, walkedIn: false };
}

function waiting({ place, person }: PlaceAsked, withEntry: string | null): SessionEvent {
  return { kind: "waiting", entry: place, person, with: withEntry };
}

/** Whether a session can still be booked at this moment. */
export function closedProblems(session: SessionState, now: string): readonly Problem[] {
  if (session.cancelled !== null) return [sessionCancelled(session)];
  return session.closed || now >= session.starts ? [sessionOver(session)] : [];
}

export function sessionCancelled({ name, date }: SessionState): Problem {
  const says = `${name} on ${date} does not take place.`;
  return problem("session-cancelled", "session", says, "Choose another date.");
}

function sessionOver({ name, date }: SessionState): Problem {
  const says = `${name} on ${date} has begun.`;
  return problem("session-over", "session", says, "At the door write the name down as a walk-in instead.");
}

function personProblems(session: SessionState, { person }: PlaceAsked): readonly Problem[] {
  const place = placeOf(session, person);
  if (place !== undefined && takesMat(place)) return [alreadyHeld()];
  return session.waiting.some((it: Waiting) => it.person === person) ? [alreadyWaiting()] : [];
}

export function alreadyHeld(): Problem {
  const says = "This person has a place in this session already.";
  return problem("place-already-held", "person", says, "For a second mat write down who it is for.");
}

function alreadyWaiting(): Problem {
  const says = "This person waits for a place in this session already.";
  return problem("already-waiting", "person", says, "Nothing more is needed; the list keeps the turn.");
}
