import type { ArrangedMatPlan } from "#core/hall";
import type { FitAnswer, FitJob, FitRequest, Search } from "./fit-messages.ts";
import { emptyQueue, type FitEvent, fitQueue } from "./fit-queue.ts";

export type Fit =
  | {
      readonly ok: true;
      readonly job: FitJob;
      readonly plan: ArrangedMatPlan;
      readonly milliseconds: number;
      readonly search: Search | null;
    }
  | { readonly ok: false; readonly job: FitJob; readonly says: string };

export type Fitter = {
  readonly ask: (job: FitJob) => void;
  /** the search that goes on after the last answer keeps its plan and rests */
  readonly rest: () => void;
  readonly goOn: () => void;
  readonly close: () => void;
};

/**
 * A plan that takes longer is given up as soon as a newer floor waits. Of the halls in bench only one of 200 walls
 * takes so long; a shorter patience would leave slow phones without any plan while something is dragged.
 */
const PATIENCE_MS = 1500;

/**
 * A worker that works out mat plans; `deliver` gets each answer, and the newest floor is always worked out. Where the
 * plan is a search that goes on, its later answers come too, until something else is asked.
 */
export function openFitter(deliver: (fit: Fit) => void): Fitter {
  let queue = emptyQueue<FitJob>();
  let standing: { readonly id: number; readonly job: FitJob } | null = null;
  let worker = startWorker();
  let sentAt = 0;
  let impatience: ReturnType<typeof setTimeout> | undefined;

  function startWorker(): Worker {
    const started = new Worker(new URL("./fit-worker.ts", import.meta.url), { type: "module" });
    started.addEventListener("message", (event: MessageEvent<FitAnswer>) => answered(event.data));
    started.addEventListener("error", () => failed("The mat plan could not be worked out on this device."));
    return started;
  }

  function step(event: FitEvent<FitJob>): void {
    const before = queue.running;
    queue = fitQueue(queue, event);
    const { running } = queue;
    if (running !== null && running !== before) {
      sentAt = performance.now();
      standing = null;
      send({ kind: "fit", id: running.id, job: running.job });
    }
    clearTimeout(impatience);
    if (running !== null && queue.waiting !== null) {
      impatience = setTimeout(giveUp, Math.max(0, sentAt + PATIENCE_MS - performance.now()));
    }
  }

  function send(request: FitRequest): void {
    // oxlint-disable-next-line unicorn/require-post-message-target-origin -- a worker has no other origin
    worker.postMessage(request);
  }

  function answered(answer: FitAnswer): void {
    const { running } = queue;
    const asked = answer.id === running?.id ? running : standing;
    if (asked?.id !== answer.id) return;
    if (asked === running) {
      standing = running;
      step({ kind: "answered", id: answer.id });
    }
    const { id: _, ...rest } = answer;
    deliver({ ...rest, job: asked.job });
  }

  function failed(says: string): void {
    const { running } = queue;
    if (running === null) return;
    deliver({ ok: false, job: running.job, says });
    giveUp();
  }

  function giveUp(): void {
    standing = null;
    worker.terminate();
    worker = startWorker();
    step({ kind: "given up" });
  }

  return {
    ask: (job) => step({ kind: "asked", job }),
    rest: () => {
      if (standing !== null) send({ kind: "rest", id: standing.id });
    },
    goOn: () => {
      if (standing !== null) send({ kind: "go on", id: standing.id });
    },
    close: () => {
      clearTimeout(impatience);
      worker.terminate();
    },
  };
}
