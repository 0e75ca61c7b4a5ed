import type { Hall, ArrangedMatPlan } from "#core/hall";
import type { FitAnswer, FitRequest } from "./fit-messages.ts";
import { emptyQueue, type FitEvent, fitQueue } from "./fit-queue.ts";

export type Fit =
  | { readonly ok: true; readonly hall: Hall; readonly plan: ArrangedMatPlan; readonly milliseconds: number }
  | { readonly ok: false; readonly hall: Hall; readonly says: string };

export type Fitter = { readonly ask: (hall: Hall) => void; readonly close: () => void };

/**
 * A plan that takes longer is given up as soon as a newer floor waits. Of the halls in bench only one of 200 walls
 * takes so long; a shorter patience would leave slow phones without any plan while something is dragged.
 */
const PATIENCE_MS = 1500;

/** A worker that works out mat plans; `deliver` gets each answer, and the newest floor is always worked out. */
export function openFitter(deliver: (fit: Fit) => void): Fitter {
  let queue = emptyQueue<Hall>();
  let worker = startWorker();
  let sentAt = 0;
  let impatience: ReturnType<typeof setTimeout> | undefined;

  function startWorker(): Worker {
    const started = new Worker(new URL("./fit-worker.ts", import.meta.url), { type: "module" });
    started.addEventListener("message", (event: MessageEvent<FitAnswer>) => answered(event.data));
    started.addEventListener("error", () => failed("The mat plan could not be worked out on this device."));
    return started;
  }

  function step(event: FitEvent<Hall>): void {
    const before = queue.running;
    queue = fitQueue(queue, event);
    const { running } = queue;
    if (running !== null && running !== before) {
      sentAt = performance.now();
      // oxlint-disable-next-line unicorn/require-post-message-target-origin -- a worker has no other origin
      worker.postMessage({ id: running.id, hall: running.job } satisfies FitRequest);
    }
    clearTimeout(impatience);
    if (running !== null && queue.waiting !== null) {
      impatience = setTimeout(giveUp, Math.max(0, sentAt + PATIENCE_MS - performance.now()));
    }
  }

  function answered(answer: FitAnswer): void {
    const { running } = queue;
    if (answer.id !== running?.id) return;
    step({ kind: "answered", id: answer.id });
    const hall = running.job;
    if (answer.ok) deliver({ ok: true, hall, plan: answer.plan, milliseconds: answer.milliseconds });
    else deliver({ ok: false, hall, says: answer.says });
  }

  function failed(says: string): void {
    const { running } = queue;
    if (running === null) return;
    deliver({ ok: false, hall: running.job, says });
    giveUp();
  }

  function giveUp(): void {
    worker.terminate();
    worker = startWorker();
    step({ kind: "given up" });
  }

  return {
    ask: (hall) => step({ kind: "asked", job: hall }),
    close: () => {
      clearTimeout(impatience);
      worker.terminate();
    },
  };
}
