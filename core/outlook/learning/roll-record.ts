import type { SeenCount } from "#kernels/statistics";
import { demandSeen, type HeldSession } from "../happened/held-session.ts";

/** What a register shows of the roll, session by session. */
export type RollRecord = {
  /** who wanted to come; where newcomers were counted, the others of them */
  readonly seen: readonly SeenCount[];
  readonly newcomers: readonly (number | null)[];
  readonly seasons: readonly number[];
  /** who came to the first session because the class was new; null where it was not, or nobody knows */
  readonly opening: number | null;
};

/**
 * What is known of a class before its first session recorded: nothing, for it was new; so many regulars who followed
 * her; or that it ran, with nobody knows how many.
 */
export type Beginning = "new" | "with known regulars" | "running";

type UndatedSession = Omit<HeldSession, "date">;

/**
 * Newcomers count only where nobody was turned away: of those sent home nobody knows who was new. In a full session
 * those who got in are the ones who may stay, so they are taken as they are. The first session of a new class is its
 * opening: all of its people are new, whoever counted them, and there is nothing else to be seen of it.
 */
export function rollRecord(
  held: readonly UndatedSession[],
  seasons: readonly number[],
  beginning: Beginning,
): RollRecord {
  const counted = held.map((it) => ((it.turnedAway ?? 0) > 0 ? null : it.newcomers));
  const opening = openingOf(held, counted, beginning);
  const newcomers = opening === null ? counted : [opening, ...counted.slice(1)];
  const seen = held.map((session, at): SeenCount => {
    if (at === 0 && beginning === "new") return { kind: "exact", count: 0 };
    const { kind, count } = demandSeen(session);
    return { kind, count: count - (newcomers[at] ?? 0) };
  });
  return { seen, newcomers, seasons, opening };
}

/** Beside regulars who followed her, only newcomers who were counted are known to have come for the opening. */
function openingOf(
  held: readonly UndatedSession[],
  counted: readonly (number | null)[],
  beginning: Beginning,
): number | null {
  switch (beginning) {
    case "new":
      return held[0]?.heads ?? null;
    case "with known regulars":
      return counted[0] ?? null;
    case "running":
      return null;
  }
}
