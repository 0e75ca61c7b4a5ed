import { bestWeek, searchWith, type WeekSearch } from "./best-week.ts";
import { countWeek } from "./check-week.ts";

/** With so many classes or evenings a week no more than this is left, and with fewer less is. */
export type TradePoint = {
  readonly count: number;
  /** coins a year */
  readonly leaves: number;
  readonly bound: number;
  readonly chosen: readonly number[];
};

/**
 * Every efficient pair, fewest first: the cap is lifted, the best week is found, then one less than it uses is allowed,
 * until nothing is left or no week is possible (the ε-constraint method, exact for whole counts).
 */
export function tradeOff(search: WeekSearch, by: "classes" | "evenings"): readonly TradePoint[] {
  const points: TradePoint[] = [];
  let cap: number | null = null;
  for (;;) {
    const point = pointAt(search, by, cap);
    if (point === null) break;
    // as much with fewer: the former was not efficient
    if (points.at(-1)?.leaves === point.leaves) points.pop();
    points.push(point);
    cap = point.count - 1;
    if (cap < (by === "classes" ? 1 : 0)) break;
  }
  return points.filter(({ chosen }) => chosen.length > 0).toReversed();
}

function pointAt(search: WeekSearch, by: "classes" | "evenings", cap: number | null): TradePoint | null {
  const { limits } = search.week;
  const changed = by === "classes" ? { ...limits, classesAWeek: cap } : { ...limits, evenings: cap };
  const week = { ...search.week, limits: changed };
  const found = bestWeek(searchWith(search, week), { goal: "leaves" });
  if (found.kind !== "found") return null;
  const { chosen, value, bound } = found;
  const count = by === "classes" ? chosen.length : countWeek(week, chosen).evenings;
  return { count, leaves: value, bound, chosen };
}
