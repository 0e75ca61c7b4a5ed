import type { GainsJob, GainsReply, GainsRequest } from "./gains-messages.ts";
import { type GainsList, heardGain, newGainsList } from "./gains-list.ts";

export type Gains = {
  readonly begin: (job: GainsJob) => void;
  /** the step under way is still taken */
  readonly stop: () => void;
  readonly goOn: () => void;
  readonly close: () => void;
};

/** A worker that tries one change after the other; `show` gets the list after each. Started when first needed. */
export function openGains(show: (list: GainsList) => void): Gains {
  let worker: Worker | null = null;
  let list: GainsList | null = null;
  let waiting = false;

  function become(next: GainsList): void {
    list = next;
    show(next);
  }

  function send(request: GainsRequest): void {
    worker ??= started();
    waiting = true;
    // oxlint-disable-next-line unicorn/require-post-message-target-origin -- a worker has no other origin
    worker.postMessage(request);
  }

  function started(): Worker {
    const fresh = new Worker(new URL("./gains-worker.ts", import.meta.url), { type: "module" });
    fresh.addEventListener("message", (event: MessageEvent<GainsReply>) => heard(event.data));
    fresh.addEventListener("error", () => {
      if (list !== null) become({ ...list, state: "failed" });
    });
    return fresh;
  }

  function heard(reply: GainsReply): void {
    if (list === null || reply.id !== list.id) return;
    waiting = false;
    become(heardGain(list, reply));
    askNext();
  }

  function askNext(): void {
    if (list?.state === "running" && !waiting) send({ id: list.id, kind: "next" });
  }

  return {
    begin: (job) => {
      const fresh = newGainsList((list?.id ?? 0) + 1, job);
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
