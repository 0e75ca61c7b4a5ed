import type {
  ArrangedMatPlan,
  LinedMatPlan,
  MostMatPlan,
  RoundMatPlan,
} from "../arrangement/arrangement-types.ts";
import { middleAmong } from "../arrangement/facing-mats.ts";
import { placesSentences } from "../arrangement/places-sentences.ts";
import { ringSentences } from "../arrangement/ring-sentences.ts";
import type { Hall } from "../hall.ts";
import { hallFrame } from "../hall-frame.ts";
import { layLines } from "../lay-lines.ts";
import type { PlacedMat } from "../mat-plan-types.ts";
import { setOut } from "../set-out.ts";
import { directionOf, rowsOf } from "./rows-of.ts";

/**
 * The plan with only the mats that are kept, by index, and its set-out told anew. Its bound stays: no plan of the
 * arrangement holds more than that, whatever is left out of this one.
 */
export function thinnedPlan(hall: Hall, plan: ArrangedMatPlan, kept: readonly number[]): ArrangedMatPlan {
  const stays = new Set(kept);
  switch (plan.arrangement) {
    case "lines":
    case "staggered":
    case "facing": {
      let index = -1;
      return relaidPlan(
        hall,
        plan,
        rowsOf(plan).map((row) => row.filter(() => stays.has(++index))),
      );
    }
    case "round":
      return thinnedRings(plan, stays);
    case "most":
      return thinnedPlaces(plan, stays);
  }
}

/** A plan in lines with other mats in them; lines that have none are gone. */
export function relaidPlan<Plan extends LinedMatPlan>(
  hall: Hall,
  plan: Plan,
  rows: readonly (readonly PlacedMat[])[],
): Plan {
  const degrees = directionOf(rowsOf(plan));
  const lines = rows.filter((row) => row.length > 0).map((pieces) => ({ pieces }));
  const laid = layLines(hall, lines, degrees, hallFrame(hall));
  const mats = laid.lines.flat();
  const relaid = { ...plan, ...counted(plan, mats), mats, setOut: setOut(hall, laid) };
  if (relaid.arrangement !== "facing" || relaid.middle === null) return relaid;
  return { ...relaid, middle: mats.length === 0 ? null : middleAmong(hall, laid, relaid.middle) };
}

function counted({ bound }: ArrangedMatPlan, mats: readonly PlacedMat[]) {
  return { count: mats.length, proven: mats.length === bound };
}

function thinnedRings(plan: RoundMatPlan, stays: ReadonlySet<number>): RoundMatPlan {
  let index = -1;
  const rings = plan.ringSetOut.rings
    .map((ring) => ({ ...ring, marks: ring.marks.filter(() => stays.has(++index)) }))
    .filter((ring) => ring.marks.length > 0);
  const mats = plan.mats.filter((_, mat) => stays.has(mat));
  const figured = { ...plan.ringSetOut, rings };
  const ringSetOut = { ...figured, sentences: ringSentences(figured, "metric") };
  return { ...plan, ...counted(plan, mats), mats, ringSetOut };
}

function thinnedPlaces(plan: MostMatPlan, stays: ReadonlySet<number>): MostMatPlan {
  let number = 0;
  const groups = plan.placesSetOut.groups
    .map((group) => ({
      ...group,
      places: group.places
        .filter((place) => stays.has(place.number - 1))
        .map((place) => ({ ...place, number: ++number })),
    }))
    .filter((group) => group.places.length > 0);
  const mats = plan.mats.filter((_, mat) => stays.has(mat));
  const figured = { ...plan.placesSetOut, groups };
  const placesSetOut = { ...figured, sentences: placesSentences(figured, "metric") };
  return { ...plan, ...counted(plan, mats), mats, placesSetOut };
}
