import type { RecordStore, SeenAnswer } from "#app/ports";
import type { SessionState } from "#core/roll";
import { good, type Result } from "#core/words";
import { type EveningsOrder, readSessions } from "./read-evenings.ts";

/**
 * Who was at the sessions of a stretch of time: the last date of each and how often. It ranks nobody; a screen says
 * "not seen for 4 weeks" of it and no more.
 */
export async function readSeen(
  store: RecordStore,
  order: EveningsOrder,
): Promise<Result<SeenAnswer["seen"]>> {
  const sessions = await readSessions(store, order);
  if (!sessions.ok) return sessions;
  const seen = new Map<string, { readonly last: string; readonly times: number }>();
  // in order of their start, so that the last one stays
  for (const { state } of sessions.value) {
    // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- the list is of sessions
    const session = state as SessionState;
    for (const person of cameTo(session))
      seen.set(person, { last: session.date, times: (seen.get(person)?.times ?? 0) + 1 });
  }
  return good([...seen].map(([person, it]) => ({ person, ...it })));
}

function cameTo({ places, cameOver }: SessionState): readonly string[] {
  const marked = places.filter(({ state }) => state === "attended");
  return [...new Set([...marked, ...cameOver].map(({ person }) => person))];
}
