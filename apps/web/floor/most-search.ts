import {
  advanceMostMats,
  type Hall,
  type MostMatPlan,
  mostMatPlan,
  type MostMatsRun,
  startMostMats,
} from "#core/hall";
import type { Search } from "./fit-messages.ts";
import { loadSearchSolver } from "./load-search-solver.ts";

export type MostFound = { readonly plan: MostMatPlan; readonly search: Search };

export type MostSearch = {
  readonly rest: () => void;
  readonly goOn: () => void;
  /** for good: another floor is asked for */
  readonly leave: () => void;
};

/** No slice of the search is longer, save one that asks the solver, so that a newer floor is heard of soon. */
const SLICE_MS = 60;
/** A floor that stands still so long is not being dragged. */
const STILL_MS = 400;
/** It rests by itself after a while: a phone in a hall has other uses for its battery. */
const PATIENCE_MS = 30_000;

/**
 * The most mats, better and better: a first plan at once, and once the floor stands still the search goes on beside the
 * page with the solver, telling each time it finds a mat or lowers the bound, until it is proven or rests.
 */
export function mostSearch(hall: Hall, tell: (found: MostFound) => void): MostSearch {
  let run: MostMatsRun = startMostMats(hall);
  let plan = mostMatPlan(run);
  let state: Search["state"] = run.progress.finished ? "finished" : "goes on";
  let left = false;
  let until = performance.now() + STILL_MS + PATIENCE_MS;
  let withSolver = false;
  let timer: ReturnType<typeof setTimeout> | undefined;

  function say(): void {
    const { count, bound } = run.progress;
    if (count !== plan.count || bound !== plan.bound) plan = mostMatPlan(run);
    const { sentence, whatItIsDoing } = run.progress;
    tell({ plan, search: { state, sentence, whatItIsDoing } });
  }

  async function takeSolver(): Promise<void> {
    withSolver = true;
    const solver = await loadSearchSolver();
    // begun anew: nothing was looked for yet but the first plan, and that comes out the same
    if (solver !== null && !left) run = startMostMats(hall, { solver });
  }

  function slice(): void {
    const start = performance.now();
    while (!run.progress.finished && performance.now() - start < SLICE_MS) run = advanceMostMats(run, 1);
    if (run.progress.finished) state = "finished";
    else if (performance.now() > until) state = "rests";
    const { count, bound } = run.progress;
    if (state !== "goes on" || count !== plan.count || bound !== plan.bound) say();
    next(0);
  }

  function next(wait: number): void {
    if (left || state !== "goes on") return;
    timer = setTimeout(() => void step(), wait);
  }

  async function step(): Promise<void> {
    if (!withSolver) await takeSolver();
    if (!left && state === "goes on") slice();
  }

  say();
  next(STILL_MS);
  return {
    rest: () => {
      if (state !== "goes on") return;
      clearTimeout(timer);
      state = "rests";
      say();
    },
    goOn: () => {
      if (state !== "rests") return;
      state = "goes on";
      until = performance.now() + PATIENCE_MS;
      say();
      next(0);
    },
    leave: () => {
      left = true;
      clearTimeout(timer);
    },
  };
}
