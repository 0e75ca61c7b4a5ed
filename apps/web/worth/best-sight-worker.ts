import { type BestSight, bestSight, type Hall, type ArrangedMatPlan } from "#core/hall";
import type { LengthUnits } from "#core/words";
import type { Solver } from "#kernels/search";
import { loadSearchSolver } from "../floor/load-search-solver.ts";
import { serveSteps } from "./serve-steps.ts";
import type { StepsRequest } from "./steps-messages.ts";

export type BestSightJob = {
  readonly hall: Hall;
  /** the plan that there is already */
  readonly plan: ArrangedMatPlan;
  readonly count: number;
  readonly units: LengthUnits;
};

/** As far as the search for the most is taken where its plan is one of those to choose from. */
const STEPS = 80;

let solver: Promise<Solver | null> | null = null;
let known: Solver | null = null;

async function answer({ data }: MessageEvent<StepsRequest<BestSightJob>>): Promise<void> {
  solver ??= loadSearchSolver();
  known = await solver;
  const reply = serve(data);
  if (reply !== null) postMessage(reply);
}

const serve = serveSteps<BestSightJob, BestSight>(({ hall, plan, count, units }) => ({
  total: null,
  notes: [],
  items: bestSight(hall, count, known, { plans: [plan], steps: STEPS, units }),
}));

addEventListener("message", (event: MessageEvent<StepsRequest<BestSightJob>>) => void answer(event));
