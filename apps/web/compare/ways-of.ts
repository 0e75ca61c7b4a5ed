import type { WayOffered } from "#app/views";
import type { ClassDocument } from "#core/class";
import { type Arrangement, arrangedPlan, capacityOf, type HallDocument, readHall } from "#core/hall";

/**
 * How many the class could have in a hall with its own mats and limits, the mats each way that it asks for; null when
 * the floor is not sound.
 */
export function waysOf(course: ClassDocument, hall: HallDocument): readonly WayOffered[] | null {
  const laid = course.mats === null ? hall : { ...hall, ...course.mats };
  const ways = (course.planning?.arrangements ?? [course.arrangement ?? hall.arrangement ?? "lines"]).map(
    (arrangement) => ({
      arrangement,
      plan: planned(laid, arrangement),
    }),
  );
  const { matsOwned, ownCap, insurerCap } = course;
  const { postedCapacity, peopleNotOnMats } = hall;
  const limits = { postedCapacity, peopleNotOnMats, matsOwned, ownCap, insurerCap };
  const sound = ways.flatMap(({ arrangement, plan }) =>
    plan === null ? [] : [{ arrangement, capacity: capacityOf(plan, limits).capacity }],
  );
  return sound.length === 0 ? null : sound;
}

type Planned = { readonly count: number; readonly bound: number; readonly proven: boolean };

/** Plans are kept by what they rest on: a key in a price must not lay every floor again. */
const plans = new Map<string, Planned | null>();
const MOST_KEPT = 400;

function planned(hall: HallDocument, arrangement: Arrangement): Planned | null {
  const { hire: _, notes: __, address: ___, ...floor } = hall;
  const key = `${arrangement} ${JSON.stringify(floor)}`;
  const kept = plans.get(key);
  if (kept !== undefined) return kept;
  const read = readHall(hall);
  const plan = read.ok ? countsOf(arrangedPlan(read.value, arrangement)) : null;
  if (plans.size >= MOST_KEPT) plans.clear();
  plans.set(key, plan);
  return plan;
}

function countsOf({ count, bound, proven }: Planned): Planned {
  return { count, bound, proven };
}
