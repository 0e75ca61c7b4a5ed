import type { KeptStream, RecordStore, StreamName } from "#app/ports";
import type { SessionState } from "#core/roll";
import { good, type Result } from "#core/words";

/** So many sessions are read at once: more than a year of a full week has. */
const MOST_SESSIONS = 1000;

export type EveningsOrder = {
  readonly practice: string;
  /** ISO 8601 instants, UTC: sessions that begin from the one until before the other */
  readonly from: string;
  readonly until: string;
  /** one class only */
  readonly class?: string | undefined;
};

/** The sessions of a stretch of time with everybody and every pass in them: what a register needs to be at hand. */
export async function readEvenings(
  store: RecordStore,
  order: EveningsOrder,
): Promise<Result<readonly KeptStream[]>> {
  const sessions = await readSessions(store, order);
  if (!sessions.ok) return sessions;
  const behind = await store.streams(order.practice, [...new Set(sessions.value.flatMap(namesIn))]);
  return behind.ok ? good([...sessions.value, ...behind.value]) : behind;
}

/** The sessions of a stretch of time, in order of their start, without the people behind them. */
export function readSessions(
  store: RecordStore,
  { practice, from, until, class: belongs }: EveningsOrder,
): Promise<Result<readonly KeptStream[]>> {
  const only = belongs === undefined ? {} : { belongs };
  return store.list(practice, { kind: "session", from, until, most: MOST_SESSIONS, ...only });
}

function namesIn({ state }: KeptStream): readonly StreamName[] {
  // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- the list is of sessions
  const { places, waiting, cameOver } = state as SessionState;
  return [
    ...[...places, ...waiting, ...cameOver].map(({ person }) => `person/${person}` as const),
    ...places.flatMap(({ pass }) => (pass === null ? [] : [`pass/${pass}` as const])),
  ];
}
