import { sumOf } from "./sum-of.ts";
import type { Candidate, ComparedHall, Comparison, Excluded, Slot, Way } from "./compare-types.ts";
import { hallDates } from "./hall-dates.ts";
import { whyNotFree } from "./why-not-free.ts";
import { yearHire } from "./year-hire.ts";

export type Candidates = { readonly can: readonly Candidate[]; readonly cannot: readonly Excluded[] };

/** Each hall at each time of the week, the mats each way: those that can be had, and those that cannot, with why. */
export function candidatesOf(comparison: Comparison): Candidates {
  const all = comparison.halls.flatMap((hall, index) =>
    comparison.slots.map((slot) => candidatesAt(comparison, hall, index, slot)),
  );
  return {
    can: all.flatMap((it) => ("why" in it ? [] : it)),
    cannot: all.flatMap((it) => ("why" in it ? [it] : [])),
  };
}

function candidatesAt(
  comparison: Comparison,
  hall: ComparedHall,
  index: number,
  slot: Slot,
): readonly Candidate[] | Excluded {
  const { setUp, class: teaching, packDown } = comparison.minutes;
  const excluded = (why: string): Excluded => ({
    hall: index,
    said: saidOf(comparison, hall, slot, null),
    why,
  });
  const taken = whyNotFree(hall.free, slot, slot.start - setUp, slot.start + teaching + packDown);
  if (taken !== null) return excluded(taken);
  const { dates, lostTo } = hallDates(comparison, hall, slot.weekday);
  if (dates.length === 0) return excluded(noDates(lostTo));
  const each = hall.travelCost + comparison.otherCost;
  const yearCost = yearHire(comparison, hall.hire, dates) + dates.length * each;
  return hall.ways.map((way) => ({
    hall: index,
    name: hall.name,
    slot,
    way: way.name,
    said: saidOf(comparison, hall, slot, way),
    capacity: way.capacity,
    sessions: dates.length,
    lostTo,
    yearCost,
    doorToDoor: hall.travelMinutes + setUp + teaching + packDown,
    freeIsStated: hall.free !== null,
  }));
}

function saidOf({ slots }: Comparison, hall: ComparedHall, slot: Slot, way: Way | null): string {
  const parts = [
    ...(way === null || way.name === null || hall.ways.length === 1 ? [] : [way.name]),
    ...(slots.length === 1 ? [] : [slot.said]),
  ];
  return parts.length === 0 ? hall.name : `${hall.name} (${parts.join(", ")})`;
}

/** "no date of the year is left: 4 are lost to half-term, 6 outside its terms" */
function noDates(lostTo: Candidate["lostTo"]): string {
  if (sumOf(lostTo) === 0) return "the year has no such day of the week";
  return `no date of the year is left: ${lostTo.map(({ why, dates }) => `${dates} to ${why}`).join(", ")}`;
}
