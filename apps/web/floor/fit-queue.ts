// Example: asked for plans 1, 2, 3 while 1 is being worked out, the worker gets 1 and then 3; 2 is never worked out.
// Invariant: at most one job runs and at most one waits, the newest.

export type FitQueue<Job> = {
  readonly running: { readonly id: number; readonly job: Job } | null;
  readonly waiting: { readonly id: number; readonly job: Job } | null;
  readonly lastId: number;
};

export type FitEvent<Job> =
  | { readonly kind: "asked"; readonly job: Job }
  | { readonly kind: "answered"; readonly id: number }
  | { readonly kind: "given up" };

export function emptyQueue<Job>(): FitQueue<Job> {
  return { running: null, waiting: null, lastId: 0 };
}

/** The queue after an event; where `running` is new, its job is to be sent to the worker. */
export function fitQueue<Job>(queue: FitQueue<Job>, event: FitEvent<Job>): FitQueue<Job> {
  switch (event.kind) {
    case "asked": {
      const entry = { id: queue.lastId + 1, job: event.job };
      if (queue.running === null) return { running: entry, waiting: null, lastId: entry.id };
      return { running: queue.running, waiting: entry, lastId: entry.id };
    }
    case "answered":
      // an answer from a worker that was ended meanwhile changes nothing
      return event.id === queue.running?.id ? nextUp(queue) : queue;
    case "given up":
      return nextUp(queue);
  }
}

function nextUp<Job>(queue: FitQueue<Job>): FitQueue<Job> {
  return { running: queue.waiting, waiting: null, lastId: queue.lastId };
}
