import type { StepsReply, StepsRequest } from "./steps-messages.ts";

export type Steps<Item> = {
  /** null where it is only known on the way */
  readonly total: number | null;
  /** what belongs to the list beside its items, a sentence each */
  readonly notes: readonly string[];
  readonly items: Generator<Item, void, undefined>;
};

/** In a worker: answers a request for a list; null for a step of one that is no longer the newest. */
export function serveSteps<Job, Item>(
  begin: (job: Job) => Steps<Item>,
): (request: StepsRequest<Job>) => StepsReply<Item> | null {
  let running: { readonly id: number; readonly items: Steps<Item>["items"] } | null = null;
  return (request) => {
    const { id } = request;
    try {
      if (request.kind === "begin") {
        const { total, notes, items } = begin(request.job);
        running = { id, items };
        return { id, kind: "begun", total, notes };
      }
      if (running?.id !== id) return null;
      const step = running.items.next();
      return step.done === true ? { id, kind: "done" } : { id, kind: "item", item: step.value };
    } catch (error) {
      return { id, kind: "failed", says: error instanceof Error ? error.message : String(error) };
    }
  };
}
