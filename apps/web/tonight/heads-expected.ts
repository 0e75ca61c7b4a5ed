import type { SessionState } from "#core/roll";

/** Who should be in the room: those marked as here, the teacher, and helpers or guests who are on no register. */
export function headsExpected(session: SessionState, others: number): number {
  return (
    session.places.filter(({ state }) => state === "attended").length + session.cameOver.length + 1 + others
  );
}

/** "All 14 are here." or who is missing, in numbers; the names beside it say who. */
export function countSentence(expected: number, counted: number): string {
  if (counted === expected) return `All ${expected} are counted.`;
  if (counted > expected) {
    return `${counted - expected} more than the register: ${counted} counted, ${expected} expected. Somebody is not marked.`;
  }
  const missing = expected - counted;
  return `${missing} ${missing === 1 ? "is" : "are"} missing: ${counted} counted, ${expected} expected. Read the names out, and tell the fire service.`;
}
