import type { PriceSheet } from "#app/views";
import type { PriceJob } from "./price-worker.ts";
import { useWorkerAnswer, type WorkerAnswer } from "./use-worker-answer.ts";

/** The questions about prices of a class, answered beside the page at every change. */
export function usePriceSheet(job: PriceJob): WorkerAnswer<PriceSheet> {
  return useWorkerAnswer<PriceSheet>(startPriceWorker, job);
}

function startPriceWorker(): Worker {
  return new Worker(new URL("./price-worker.ts", import.meta.url), { type: "module" });
}
