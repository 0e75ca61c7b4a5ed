import type { SeenCount } from "#kernels/statistics";
import type { Temporal } from "temporal-polyfill";

/** A session that took place: 12 of 14 places taken on 6 October, two of them for the first time. */
export type HeldSession = {
  readonly date: Temporal.PlainDate;
  readonly heads: number;
  readonly capacity: number;
  /** all who were told that it was full; null when nobody counted */
  readonly turnedAway: number | null;
  /** who was on the waiting list and got no place; null when there was none */
  readonly waiting: number | null;
  readonly newcomers: number | null;
};

export type DatelessSession = Pick<HeldSession, "heads" | "capacity" | "turnedAway" | "waiting">;

/**
 * What a session shows of how many wanted to come. A full one shows only that it was its places or more; a waiting
 * list shows so many more at least; and where all who were turned away were counted, the number itself.
 */
export function demandSeen({ heads, capacity, turnedAway, waiting }: DatelessSession): SeenCount {
  if (turnedAway !== null) return { kind: "exact", count: heads + Math.max(turnedAway, waiting ?? 0) };
  if (heads < capacity && (waiting ?? 0) === 0) return { kind: "exact", count: heads };
  return { kind: "at least", count: heads + (waiting ?? 0) };
}
