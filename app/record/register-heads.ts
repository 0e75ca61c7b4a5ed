import type { HappenedDocument } from "#core/outlook";
import type { SessionState } from "#core/roll";

/*
 * Closed registers as the record of a class has them: 1 December, 13 on mats of 16, one of them for the first time,
 * 2 still on the waiting list → { date: "2026-12-01", heads: 13, capacity: 16, newcomers: 1, waiting: 2 }.
 */

type HeldThen = HappenedDocument["sessions"][number];

/**
 * The sessions of a class that are over in the register and that its record does not have yet, in order of their
 * dates. Who is new is told only where the register goes back to the first session: before that it cannot know.
 */
export function registerHeads(
  sessions: readonly SessionState[],
  record: Pick<HappenedDocument, "sessions">,
): readonly HeldThen[] {
  const over = sessions
    .filter(({ closed, cancelled }) => closed || cancelled !== null)
    .toSorted((one, other) => (one.starts < other.starts ? -1 : 1));
  const written = new Set(record.sessions.map(({ date }) => date));
  const first = over.find(({ cancelled }) => cancelled === null)?.date ?? "";
  const whole = record.sessions.every(({ date }) => date >= first);
  const seen = new Set<string>();
  return over.map((session) => headsOf(session, seen, whole)).filter(({ date }) => !written.has(date));
}

/** Those who came are added to the ones seen, also for a session that is written down already. */
function headsOf(session: SessionState, seen: Set<string>, whole: boolean): HeldThen {
  const { date, capacity } = session;
  if (session.cancelled !== null) return { date, heads: 0, cancelled: true };
  const came = cameTo(session);
  const newcomers = came.filter((person) => !seen.has(person)).length;
  for (const person of came) seen.add(person);
  const waiting = session.waiting.length;
  return {
    date,
    heads: came.length,
    // somebody let in beyond the mats took a mat all the same
    capacity: Math.max(capacity, came.length),
    ...(whole ? { newcomers } : {}),
    ...(waiting === 0 ? {} : { waiting }),
  };
}

function cameTo({ places, cameOver }: SessionState): readonly string[] {
  const attended = places.filter(({ state }) => state === "attended");
  return [...new Set([...attended, ...cameOver].map(({ person }) => person))];
}
