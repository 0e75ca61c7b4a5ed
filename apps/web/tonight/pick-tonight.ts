import type { SessionHere } from "../record/lookup.ts";
import { isAtHand } from "./session-times.ts";

/**
 * The session whose register she is likely to want: one that is on or just over and not closed, else the next to
 * begin, else the one just over. Undefined where none of what is at hand fits.
 */
export function pickTonight(sessions: readonly SessionHere[], now: string): SessionHere | undefined {
  const held = sessions.filter(({ state }) => state.cancelled === null);
  const atHand = held.filter(({ state }) => isAtHand(state, now));
  const open = atHand.find(({ state }) => !state.closed);
  return open ?? held.find(({ state }) => state.starts > now) ?? atHand.at(-1);
}

/** The sessions of the next fourteen days, in order. */
export function upcoming(sessions: readonly SessionHere[], now: string): readonly SessionHere[] {
  const until = new Date(Date.parse(now) + 14 * 86_400_000).toISOString();
  return sessions.filter(({ state }) => state.starts > now && state.starts < until);
}

/** The sessions of the last fourteen days, the latest first. */
export function lately(sessions: readonly SessionHere[], now: string): readonly SessionHere[] {
  return sessions.filter(({ state }) => state.starts <= now).toReversed();
}
