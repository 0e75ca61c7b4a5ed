import type { SeenCount } from "#kernels/statistics";
import { demandSeen, type HeldSession } from "../happened/held-session.ts";

/** What a register shows of the roll, session by session. */
export type RollRecord = {
  /** who wanted to come; where newcomers were counted, the others of them */
  readonly seen: readonly SeenCount[];
  readonly newcomers: readonly (number | null)[];
  readonly seasons: readonly number[];
};

/**
 * Newcomers count only where nobody was turned away: of those sent home nobody knows who was new. In a full session
 * those who got in are the ones who may stay, so they are taken as they are.
 */
export function rollRecord(held: readonly HeldSession[], seasons: readonly number[]): RollRecord {
  const newcomers = held.map((it) => ((it.turnedAway ?? 0) > 0 ? null : it.newcomers));
  const seen = held.map((session, at) => {
    const { kind, count } = demandSeen(session);
    return { kind, count: count - (newcomers[at] ?? 0) };
  });
  return { seen, newcomers, seasons };
}
