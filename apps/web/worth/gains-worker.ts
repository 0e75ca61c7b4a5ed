import {
  type ArrangedMatPlan,
  arrangedPlan,
  changesToTry,
  type Gain,
  type Hall,
  whatWouldGain,
} from "#core/hall";
import type { GainsJob, GainsReply, GainsRequest } from "./gains-messages.ts";

type Steps = Generator<Gain<ArrangedMatPlan>, void, undefined>;

let running: { readonly id: number; readonly steps: Steps } | null = null;

addEventListener("message", ({ data }: MessageEvent<GainsRequest>) => {
  const reply = replyTo(data);
  if (reply !== null) postMessage(reply);
});

/** Null for a step of a list that is no longer the newest. */
function replyTo(request: GainsRequest): GainsReply | null {
  const { id } = request;
  try {
    if (request.kind === "begin") return begun(id, request.job);
    if (running?.id !== id) return null;
    const step = running.steps.next();
    return step.done === true ? { id, kind: "done" } : { id, kind: "gain", gain: step.value };
  } catch (error) {
    return { id, kind: "failed", says: error instanceof Error ? error.message : String(error) };
  }
}

function begun(id: number, { hall, plan, units }: GainsJob): GainsReply {
  const { trials, leftOut } = changesToTry(hall, units);
  const planOf = (changed: Hall) => arrangedPlan(changed, plan.arrangement);
  running = { id, steps: whatWouldGain(hall, plan, planOf, units) };
  return { id, kind: "begun", total: trials.length, leftOut };
}
