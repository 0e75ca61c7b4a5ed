import { bestWeek, type WeekSearch } from "./best-week.ts";

/** The lightest week that earns the target, or the most that any week within the limits earns. */
export type Lightest =
  | { readonly kind: "enough"; readonly chosen: readonly number[]; readonly proven: boolean }
  | { readonly kind: "too little"; readonly chosen: readonly number[] }
  | { readonly kind: "unknown" };

/** Fewest classes a week first, then least time from door to door; earned is after travel, wishes not priced. */
export function lightestWeek(search: WeekSearch, target: number): Lightest {
  const fewest = bestWeek(search, { goal: "classes", earnsAtLeast: target });
  if (fewest.kind === "unknown") return { kind: "unknown" };
  if (fewest.kind === "impossible") return mostEarned(search);
  const shortest = bestWeek(search, {
    goal: "minutes",
    earnsAtLeast: target,
    classesAtMost: fewest.chosen.length,
  });
  const proven = fewest.bound === fewest.value;
  if (shortest.kind !== "found") return { kind: "enough", chosen: fewest.chosen, proven: false };
  return { kind: "enough", chosen: shortest.chosen, proven: proven && shortest.bound === shortest.value };
}

function mostEarned(search: WeekSearch): Lightest {
  const { week } = search;
  const most = bestWeek({ ...search, week: { ...week, wishes: [] } }, { goal: "leaves" });
  return most.kind === "found" ? { kind: "too little", chosen: most.chosen } : { kind: "unknown" };
}
