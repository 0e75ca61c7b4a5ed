import type { SeenCount } from "#kernels/statistics";
import { demandSeen, type HeldSession } from "../happened/held-session.ts";

/** What a register shows of the roll: who wanted to come, session by session, and how many of them were new. */
export type RollRecord = {
  readonly seen: readonly SeenCount[];
  readonly newcomers: readonly (number | null)[];
  readonly seasons: readonly number[];
};

/**
 * Newcomers count only where nobody was turned away: of those sent home nobody knows who was new. In a full session
 * those who got in are the ones who may stay, so they are taken as they are.
 */
export function rollRecord(held: readonly HeldSession[], seasons: readonly number[]): RollRecord {
  return {
    seen: held.map(demandSeen),
    newcomers: held.map(({ newcomers, turnedAway }) => ((turnedAway ?? 0) > 0 ? null : newcomers)),
    seasons,
  };
}
