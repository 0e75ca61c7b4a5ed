import { useMemo } from "react";
import type { ArrangedMatPlan, Hall } from "#core/hall";
import type { LengthUnits } from "#core/words";
import { useWorkerAnswer, type WorkerAnswer } from "../prices/use-worker-answer.ts";
import type { Worth } from "./worth-worker.ts";

/** Who sees and who gets out, worked out beside the page whenever a plan has stood still. */
export function useWorth(
  hall: Hall,
  plan: ArrangedMatPlan,
  wayWidth: number,
  units: LengthUnits,
): WorkerAnswer<Worth> {
  return useWorkerAnswer<Worth>(
    startWorthWorker,
    useMemo(() => ({ hall, plan, wayWidth, units }), [hall, plan, wayWidth, units]),
  );
}

function startWorthWorker(): Worker {
  return new Worker(new URL("./worth-worker.ts", import.meta.url), { type: "module" });
}
