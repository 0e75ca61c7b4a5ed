import type { Hall, ArrangedMatPlan } from "#core/hall";
import { useEffect, useState } from "react";

export type CalmPlan = { readonly hall: Hall; readonly plan: ArrangedMatPlan };

/** A moment without change before more is asked of a plan: while something is dragged only its mats are worked out. */
const CALM_MS = 350;

/**
 * The plan once it has stood still, the first one at once; null before there is any. A hall that is the same in all
 * that a plan rests on stays the same value, so that a name that is typed asks nothing anew.
 */
export function useCalmPlan(hall: Hall | null, plan: ArrangedMatPlan | null): CalmPlan | null {
  const [calm, setCalm] = useState<CalmPlan | null>(null);
  useEffect(() => {
    if (hall === null || plan === null) return undefined;
    const wait = setTimeout(
      () => setCalm((before) => (before !== null && same(before, { hall, plan }) ? before : { hall, plan })),
      CALM_MS,
    );
    return () => clearTimeout(wait);
  }, [hall, plan]);
  return calm ?? (hall === null || plan === null ? null : { hall, plan });
}

function same(one: CalmPlan, other: CalmPlan): boolean {
  return (
    one.plan.arrangement === other.plan.arrangement &&
    one.plan.count === other.plan.count &&
    one.plan.bound === other.plan.bound &&
    floorKey(one.hall) === floorKey(other.hall)
  );
}

function floorKey(hall: Hall): string {
  return JSON.stringify({ ...hall, name: "" });
}
