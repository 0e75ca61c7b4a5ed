import {
  type ArrangedMatPlan,
  arrangedPlan,
  changesToTry,
  type Gain,
  type Hall,
  whatWouldGain,
} from "#core/hall";
import type { LengthUnits } from "#core/words";
import { serveSteps } from "./serve-steps.ts";
import type { StepsRequest } from "./steps-messages.ts";

export type GainsJob = {
  readonly hall: Hall;
  readonly plan: ArrangedMatPlan;
  readonly units: LengthUnits;
};

/** As far as a search for the most is taken for each change: some tenths of a second. */
const STEPS = 40;

const serve = serveSteps<GainsJob, Gain<ArrangedMatPlan>>(({ hall, plan, units }) => {
  const { trials, leftOut } = changesToTry(hall, units, plan);
  const planOf = (changed: Hall) => arrangedPlan(changed, plan.arrangement, { steps: STEPS });
  return { total: trials.length, notes: leftOut, items: whatWouldGain(hall, plan, planOf, units) };
});

addEventListener("message", ({ data }: MessageEvent<StepsRequest<GainsJob>>) => {
  const reply = serve(data);
  if (reply !== null) postMessage(reply);
});
