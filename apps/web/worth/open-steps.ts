import { heardStep, newStepList, type StepList } from "./step-list.ts";
import type { StepsReply, StepsRequest } from "./steps-messages.ts";

export type OpenSteps<Job> = {
  readonly begin: (job: Job) => void;
  /** the step under way is still taken */
  readonly stop: () => void;
  readonly goOn: () => void;
  readonly close: () => void;
};

/** A worker that fills a list step by step; `show` gets the list after each. Started when first needed. */
export function openSteps<Job, Item>(
  start: () => Worker,
  show: (list: StepList<Job, Item>) => void,
): OpenSteps<Job> {
  let worker: Worker | null = null;
  let list: StepList<Job, Item> | null = null;
  let waiting = false;

  function become(next: StepList<Job, Item>): void {
    list = next;
    show(next);
  }

  function send(request: StepsRequest<Job>): void {
    worker ??= started();
    waiting = true;
    // oxlint-disable-next-line unicorn/require-post-message-target-origin -- a worker has no other origin
    worker.postMessage(request);
  }

  function started(): Worker {
    const fresh = start();
    fresh.addEventListener("message", (event: MessageEvent<StepsReply<Item>>) => heard(event.data));
    fresh.addEventListener("error", () => {
      if (list !== null) become({ ...list, state: "failed" });
    });
    return fresh;
  }

  function heard(reply: StepsReply<Item>): void {
    if (list === null || reply.id !== list.id) return;
    waiting = false;
    become(heardStep(list, reply));
    askNext();
  }

  function askNext(): void {
    if (list?.state === "running" && !waiting) send({ id: list.id, kind: "next" });
  }

  return {
    begin: (job) => {
      const fresh = newStepList<Job, Item>((list?.id ?? 0) + 1, job);
      become(fresh);
      send({ id: fresh.id, kind: "begin", job });
    },
    stop: () => {
      if (list?.state === "running") become({ ...list, state: "stopped" });
    },
    goOn: () => {
      if (list?.state !== "stopped") return;
      become({ ...list, state: "running" });
      askNext();
    },
    close: () => worker?.terminate(),
  };
}
