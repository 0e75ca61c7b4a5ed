import type { StreamName } from "#app/ports";
import type { Place, SessionState } from "#core/roll";
import type { Desk } from "./desk.ts";
import { settlePlaces } from "./settle-places.ts";

/**
 * A mat that was given up too late and taken by somebody else after all is not charged twice: as many latenesses are
 * let go as there are people who came in after them, the first given up first.
 */
export function letGoFilled(desk: Desk, id: string): void {
  const session = desk.session(id);
  if (session === undefined) return;
  const [late] = chargedLate(session);
  if (late === undefined) return;
  desk.tellSession(id, { kind: "let go", place: late.id, why: "filled" });
  settlePlaces(desk, id, session);
}

/** The passes that a lateness let go would give a class back to. */
export function passesOfLate(session: SessionState | undefined): readonly StreamName[] {
  const late = session === undefined ? [] : chargedLate(session);
  return late.flatMap(({ pass }) => (pass === null ? [] : [`pass/${pass}` as const]));
}

function chargedLate({ places }: SessionState): readonly Place[] {
  return places.filter(({ state, waived }) => state === "given up late" && !waived);
}
