import { type SessionState, takesMat } from "#core/roll";
import type { Writer } from "#core/words";
import { owesFor } from "./register-rows.ts";
import { whenWords } from "./session-times.ts";

type Asked = {
  readonly session: SessionState;
  readonly hall: string | null;
  readonly now: string;
  readonly writer: Writer;
};

/** "Slow Tuesday at 18:30 in Tithe Barn Hall: 11 of 16 mats taken, 2 wait, 3 have not paid." */
export function tonightSentence({ session, hall, now, writer }: Asked): string {
  const where = hall === null ? "" : ` in ${hall}`;
  const start = `${session.name} ${whenWords(session.starts, session.zone, now, writer)}${where}`;
  if (session.cancelled !== null) return `${start} does not take place.`;
  return `${start}: ${[...takenWords(session), ...unpaidWords(session)].join(", ")}.`;
}

/** "11 of 16 mats taken", "2 wait" */
export function takenWords(session: SessionState): readonly string[] {
  const taken = session.places.filter(takesMat).length;
  const { length } = session.waiting;
  const mats = `${taken} of ${session.capacity} ${session.capacity === 1 ? "mat" : "mats"} taken`;
  return length === 0 ? [mats] : [mats, `${length} ${length === 1 ? "waits" : "wait"}`];
}

function unpaidWords(session: SessionState): readonly string[] {
  const owing = session.places.filter((place) => owesFor(place) > 0).length;
  if (owing === 0) return [];
  return [owing === 1 ? "1 has not paid" : `${owing} have not paid`];
}

/** "7 here, 1 did not come, 3 not marked yet." */
export function markedSentence({ places }: SessionState): string {
  const count = (state: string) => places.filter((it) => it.state === state).length;
  const away = count("not come") === 0 ? "" : `, ${count("not come")} did not come`;
  const left = count("held") === 0 ? "" : `, ${count("held")} not marked yet`;
  return `${count("attended")} here${away}${left}.`;
}
