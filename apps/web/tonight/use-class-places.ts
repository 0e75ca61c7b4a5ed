import type { ClassDocument } from "#core/class";
import { capacityOf, type HallDocument, readHall } from "#core/hall";
import { useMemo } from "react";
import { useMatPlan } from "../floor/use-mat-plan.ts";

/** How many mats a class's own sheet answers for its hall; null while that is worked out or cannot be. */
export function useClassPlaces(document: ClassDocument, hall: HallDocument | null): number | null {
  const { mats } = document;
  const laid = useMemo(() => {
    if (hall === null) return null;
    const read = readHall(mats === null ? hall : { ...hall, ...mats });
    return read.ok ? read.value : null;
  }, [mats, hall]);
  const { plan, old } = useMatPlan(laid, document.arrangement ?? hall?.arrangement ?? "lines");
  if (plan === null || old || hall === null) return null;
  const { matsOwned, ownCap, insurerCap } = document;
  const { postedCapacity, peopleNotOnMats } = hall;
  return capacityOf(plan, { postedCapacity, peopleNotOnMats, matsOwned, ownCap, insurerCap }).capacity;
}
