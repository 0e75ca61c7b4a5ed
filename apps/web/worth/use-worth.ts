import { useMemo } from "react";
import type { ArrangedMatPlan, Hall } from "#core/hall";
import { useWorkerAnswer, type WorkerAnswer } from "../prices/use-worker-answer.ts";
import type { Worth } from "./worth-worker.ts";

/** Who sees and who gets out, worked out beside the page whenever a plan has stood still. */
export function useWorth(hall: Hall, plan: ArrangedMatPlan, wayWidth: number): WorkerAnswer<Worth> {
  return useWorkerAnswer<Worth>(
    startWorthWorker,
    useMemo(() => ({ hall, plan, wayWidth }), [hall, plan, wayWidth]),
  );
}

function startWorthWorker(): Worker {
  return new Worker(new URL("./worth-worker.ts", import.meta.url), { type: "module" });
}
