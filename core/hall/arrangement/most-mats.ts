import { advanceMost, type MostPlan, type MostRun, startMost } from "#kernels/packing";
import type { Hall } from "../hall.ts";
import { floorToFill } from "../mat-plan.ts";
import type { ArrangementOptions, MostMatPlan } from "./arrangement-types.ts";
import { mostProgress, type MostProgress } from "./most-progress.ts";
import { axesOf } from "./packed-lines.ts";
import { setOutPlaces } from "./set-out-places.ts";

/**
 * A search for the most mats as far as it has come. Advancing it uses it up: go on with what comes back. Nothing in it
 * knows the time: a caller that has ten seconds advances it until they are over, and keeps the best plan so far.
 */
export type MostMatsRun = {
  readonly hall: Hall;
  readonly progress: MostProgress;
  readonly search: MostRun;
};

/** A first plan at once: the best of straight lines and of blocks. It is never worse than the plan in lines. */
export function startMostMats(
  hall: Hall,
  { solver, seed }: Pick<ArrangementOptions, "solver" | "seed"> = {},
): MostMatsRun {
  const options = { ...(solver === undefined ? {} : { solver }), ...(seed === undefined ? {} : { seed }) };
  return told(hall, startMost(floorToFill(hall), hall.mat, hall.gaps, axesOf(hall), options));
}

/** So many steps further, each a few milliseconds save those that ask the solver; fewer where it is finished before. */
export function advanceMostMats({ hall, search }: MostMatsRun, steps: number): MostMatsRun {
  return told(hall, advanceMost(search, steps));
}

/** The best plan so far, to be laid with a tape. The set-out is only worked out here. */
export function mostMatPlan({ hall, search }: MostMatsRun): MostMatPlan {
  const { axis, count, bound, proven, pieces }: MostPlan = search.plan;
  const { mats, placesSetOut } = setOutPlaces(hall, axis, pieces);
  return { arrangement: "most", axis, count, bound, proven, mats, placesSetOut };
}

function told(hall: Hall, search: MostRun): MostMatsRun {
  return { hall, progress: mostProgress(search), search };
}
