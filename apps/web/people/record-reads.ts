import { queryOptions } from "@tanstack/react-query";
import type { KeptStream, PersonExport, SeenAnswer, StreamsAnswer } from "#app/ports";
import type { PassState } from "#core/books";
import type { PersonState, SessionState } from "#core/roll";
import { ask } from "../api/ask.ts";
import { ProblemsError } from "../api/practices.ts";
import { withSignalWords } from "./no-signal.ts";

export type PersonHere = { readonly id: string; readonly person: PersonState };
export type SessionHere = { readonly id: string; readonly session: SessionState };

/** Everything of the record of a practice that this page has read; made old by whatever is done here. */
export function recordKey(practice: string) {
  return ["record", practice] as const;
}

/** Everybody who was not erased, in the order of their names. */
export function peopleQuery(practice: string) {
  return queryOptions({
    queryKey: [...recordKey(practice), "people"],
    queryFn: async (): Promise<readonly PersonHere[]> => {
      const { streams } = await read<StreamsAnswer>(practice, "people");
      const order = new Intl.Collator("en");
      return streams
        .map((it) => ({ id: idOf(it), person: stateOf<PersonState>(it) }))
        .filter(({ person }) => !person.erased)
        .sort((one, other) => order.compare(one.person.contact.name, other.person.contact.name));
    },
  });
}

/** All passes and blocks, or those of one holder, the first to run out first. */
export function passesQuery(practice: string, holder?: string) {
  const only = holder === undefined ? "" : `?holder=${encodeURIComponent(holder)}`;
  return queryOptions({
    queryKey: [...recordKey(practice), "passes", holder ?? ""],
    queryFn: async (): Promise<readonly PassState[]> => {
      const { streams } = await read<StreamsAnswer>(practice, `passes${only}`);
      return streams.map((it) => stateOf<PassState>(it));
    },
  });
}

/** When each was last at a session, and how often, between two instants. */
export function seenQuery(practice: string, from: string, until: string) {
  return queryOptions({
    queryKey: [...recordKey(practice), "seen", from, until],
    queryFn: async () =>
      (await read<SeenAnswer>(practice, `people/seen?from=${from}T00:00:00Z&until=${until}T23:59:59Z`)).seen,
  });
}

/** The sessions of a stretch of days, both included, in order. */
export function sessionsQuery(practice: string, from: string, until: string) {
  return queryOptions({
    queryKey: [...recordKey(practice), "sessions", from, until],
    queryFn: async (): Promise<readonly SessionHere[]> => {
      const path = `evenings?from=${from}T00:00:00Z&until=${until}T23:59:59Z`;
      const { streams } = await read<StreamsAnswer>(practice, path);
      return streams
        .filter(({ stream }) => stream.startsWith("session/"))
        .map((it) => ({ id: idOf(it), session: stateOf<SessionState>(it) }));
    },
  });
}

/** Everything kept about one person; read anew each time, and kept by this page only while it is shown. */
export function keptQuery(practice: string, person: string, note: "closed" | "opened") {
  return queryOptions({
    queryKey: [...recordKey(practice), "kept", person, note],
    queryFn: () => read<PersonExport>(practice, `people/${encodeURIComponent(person)}/export?note=${note}`),
    gcTime: 0,
    staleTime: 0,
  });
}

async function read<Answer>(practice: string, path: string): Promise<Answer> {
  const answer = await ask(`/api/practices/${encodeURIComponent(practice)}/record/${path}`);
  if (!answer.ok) throw new ProblemsError(withSignalWords(answer.problems));
  // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- our own server, same contract
  return answer.value as Answer;
}

function idOf({ stream }: KeptStream): string {
  return stream.slice(stream.indexOf("/") + 1);
}

// oxlint-disable-next-line typescript/no-unnecessary-type-parameters -- the list that was asked for names the kind
function stateOf<State>({ state }: KeptStream): State {
  // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- each list is of one kind
  return state as State;
}
