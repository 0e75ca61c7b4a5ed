import { advanceMost, type MostPlan, type MostRun, startMost } from "#kernels/packing";
import type { Hall } from "../hall.ts";
import { floorToFill } from "../mat-plan.ts";
import type { ArrangementOptions, MostMatPlan } from "./arrangement-types.ts";
import { mostProgress, type MostProgress } from "./most-progress.ts";
import { type AxesToTry, axesToTry, boundOverAll } from "./axes-to-try.ts";
import { setOutPlaces } from "./set-out-places.ts";

/**
 * A search for the most mats as far as it has come. Advancing it uses it up: go on with what comes back. Nothing in it
 * knows the time: a caller that has ten seconds advances it until they are over, and keeps the best plan so far.
 */
export type MostMatsRun = {
  readonly hall: Hall;
  readonly progress: MostProgress;
  readonly tried: AxesToTry;
  readonly search: MostRun;
};

/** A first plan at once: the best of straight lines and of blocks. It is never worse than the plan in lines. */
export function startMostMats(
  hall: Hall,
  { solver, seed }: Pick<ArrangementOptions, "solver" | "seed"> = {},
): MostMatsRun {
  const options = { ...(solver === undefined ? {} : { solver }), ...(seed === undefined ? {} : { seed }) };
  const tried = axesToTry(hall);
  return told(hall, tried, startMost(floorToFill(hall), hall.mat, hall.gaps, tried.axes, options));
}

/** So many steps further, each a few milliseconds save those that ask the solver; fewer where it is finished before. */
export function advanceMostMats({ hall, tried, search }: MostMatsRun, steps: number): MostMatsRun {
  return told(hall, tried, advanceMost(search, steps));
}

/** The best plan so far, to be laid with a tape. The set-out is only worked out here. */
export function mostMatPlan({ hall, tried, search }: MostMatsRun): MostMatPlan {
  const { axis, pieces }: MostPlan = search.plan;
  const { mats, placesSetOut } = setOutPlaces(hall, axis, pieces);
  return { arrangement: "most", axis, ...boundOverAll(hall, tried, search.plan), mats, placesSetOut };
}

function told(hall: Hall, tried: AxesToTry, search: MostRun): MostMatsRun {
  const progress = mostProgress(search, boundOverAll(hall, tried, search.plan));
  return { hall, progress, tried, search };
}
