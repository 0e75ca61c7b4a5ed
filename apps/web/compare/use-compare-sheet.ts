import type { CompareSheet } from "#app/views";
import { useWorkerAnswer, type WorkerAnswer } from "../prices/use-worker-answer.ts";
import type { CompareJob } from "./compare-worker.ts";

/** Halls for a class, compared beside the page at every change. */
export function useCompareSheet(job: CompareJob | null): WorkerAnswer<CompareSheet> {
  return useWorkerAnswer<CompareSheet>(startCompareWorker, job);
}

function startCompareWorker(): Worker {
  return new Worker(new URL("./compare-worker.ts", import.meta.url), { type: "module" });
}
