import { type RollGuess, type RollQuestion, rollRecord, type SessionAhead } from "#core/outlook";

/** The class of the measures: what she guesses of it, and its places. */
export const guess: RollGuess = {
  newcomers: 1.2,
  stays: 0.4,
  attends: 0.65,
  leaves: 0.02,
  onRoll: null,
  echo: 0.15,
  luck: 0.15,
};
export const ALIKE = 4;
export const CAPACITY = 14;

/** A new class with this record, week by week in ordinary weeks. */
export function questionOf(
  heads: readonly number[],
  newcomers: readonly (number | null)[] = [],
): RollQuestion {
  const held = heads.map((count, at) => ({
    heads: count,
    capacity: CAPACITY,
    turnedAway: null,
    waiting: null,
    newcomers: newcomers[at] ?? null,
  }));
  const seasons = heads.map(() => 1);
  return { guess, alike: ALIKE, before: [], record: rollRecord(held, seasons, "new") };
}

/** So many ordinary weeks ahead. */
export function level(sessions: number): readonly SessionAhead[] {
  return Array.from({ length: sessions }, () => ({ season: 1, capacity: CAPACITY }));
}
