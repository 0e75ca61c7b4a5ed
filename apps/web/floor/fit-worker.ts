import { matPlan } from "#core/hall";
import type { FitAnswer, FitRequest } from "./fit-messages.ts";

addEventListener("message", (event: MessageEvent<FitRequest>) => {
  postMessage(fit(event.data));
});

function fit({ id, hall }: FitRequest): FitAnswer {
  const start = performance.now();
  try {
    const plan = matPlan(hall);
    return { id, ok: true, plan, milliseconds: performance.now() - start };
  } catch (error) {
    // a broken precondition of ours: the screen keeps the last plan and says that it is old
    return { id, ok: false, says: error instanceof Error ? error.message : String(error) };
  }
}
