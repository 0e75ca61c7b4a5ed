// Example: seven changes to try, three told so far, stopped: the three stand, and going on asks for the fourth.
// Invariant: an answer to an older list changes nothing, and a stopped list still takes the step under way.
import type { StepsReply } from "./steps-messages.ts";

export type StepList<Job, Item> = {
  readonly id: number;
  readonly job: Job;
  readonly state: "running" | "stopped" | "done" | "failed";
  /** how many items there will be; null until it is known */
  readonly total: number | null;
  readonly notes: readonly string[];
  /** in the order in which they came */
  readonly items: readonly Item[];
};

export function newStepList<Job, Item>(id: number, job: Job): StepList<Job, Item> {
  return { id, job, state: "running", total: null, notes: [], items: [] };
}

/** The list after a reply of the worker. */
export function heardStep<Job, Item>(
  list: StepList<Job, Item>,
  reply: StepsReply<Item>,
): StepList<Job, Item> {
  if (reply.id !== list.id) return list;
  switch (reply.kind) {
    case "begun":
      return { ...list, total: reply.total, notes: reply.notes };
    case "item":
      return { ...list, items: [...list.items, reply.item] };
    case "done":
      return { ...list, state: "done" };
    case "failed":
      return { ...list, state: "failed" };
  }
}
