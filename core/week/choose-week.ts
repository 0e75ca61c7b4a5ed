import { bestWeek, type FoundWeek, type WeekSearch } from "./best-week.ts";

/** The week to take, and the weeks beside it. */
export type ChosenWeek = FoundWeek & {
  /** other weeks that leave as much; a few of them at most */
  readonly ties: readonly (readonly number[])[];
  /** coins a year that the next best week leaves less; null where there is none, or none was found */
  readonly margin: number | null;
};

/** Beyond so many weeks that leave the same she chooses by something that no sum knows. */
const TIES = 4;

/**
 * Of all weeks that leave the most, the one that takes least time from door to door; then others that leave as much,
 * and how much less the next leaves. Null where no week is possible or none was found.
 */
export function chooseWeek(search: WeekSearch): ChosenWeek | null {
  const best = bestWeek(search, { goal: "leaves" });
  if (best.kind !== "found") return null;
  const { value, bound } = best;
  const shortest = bestWeek(search, { goal: "minutes", leavesAtLeast: value });
  const chosen = shortest.kind === "found" ? shortest.chosen : best.chosen;
  const ties: (readonly number[])[] = [];
  for (;;) {
    const next = bestWeek(search, { goal: "leaves", not: [chosen, ...ties] });
    if (next.kind !== "found") return { chosen, value, bound, ties, margin: null };
    if (next.value < value) return { chosen, value, bound, ties, margin: value - next.value };
    ties.push(next.chosen);
    if (ties.length === TIES) return { chosen, value, bound, ties, margin: null };
  }
}
