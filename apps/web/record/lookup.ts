import type { KeptStream } from "#app/ports";
import type { PassState } from "#core/books";
import type { PersonState, SessionState } from "#core/roll";

export type SessionHere = { readonly id: string; readonly state: SessionState };
export type PersonHere = { readonly id: string; readonly state: PersonState };
export type PassHere = { readonly id: string; readonly state: PassState };

/** Streams by what they are of. */
export type Lookup = {
  /** in the order in which they begin */
  readonly sessions: readonly SessionHere[];
  /** without those who were erased */
  readonly people: readonly PersonHere[];
  readonly passes: readonly PassHere[];
  readonly session: (id: string) => SessionState | undefined;
  readonly person: (id: string) => PersonState | undefined;
  readonly pass: (id: string) => PassState | undefined;
};

const known = new WeakMap<readonly KeptStream[], Lookup>();

/** The same lookup for the same streams: they are sorted once, not once for each part of a page. */
export function lookup(streams: readonly KeptStream[]): Lookup {
  const before = known.get(streams);
  if (before !== undefined) return before;
  const made = lookupOf(streams);
  known.set(streams, made);
  return made;
}

function lookupOf(streams: readonly KeptStream[]): Lookup {
  /* oxlint-disable typescript/no-unsafe-type-assertion -- the name of a stream holds its kind */
  const sessions = statesOf(streams, "session/") as readonly SessionHere[];
  const people = statesOf(streams, "person/") as readonly PersonHere[];
  const passes = statesOf(streams, "pass/") as readonly PassHere[];
  /* oxlint-enable typescript/no-unsafe-type-assertion */
  const bySession = byId(sessions);
  const byPerson = byId(people);
  const byPass = byId(passes);
  return {
    sessions: sessions.toSorted((a, b) => (a.state.starts < b.state.starts ? -1 : 1)),
    people: people.filter(({ state }) => !state.erased),
    passes,
    session: (id) => bySession.get(id),
    person: (id) => byPerson.get(id),
    pass: (id) => byPass.get(id),
  };
}

function statesOf(streams: readonly KeptStream[], start: string) {
  return streams
    .filter(({ stream }) => stream.startsWith(start))
    .map(({ stream, state }) => ({ id: stream.slice(start.length), state }));
}

function byId<State>(all: readonly { readonly id: string; readonly state: State }[]) {
  return new Map(all.map(({ id, state }) => [id, state]));
}
