// Example: seven changes to try, three told so far, stopped: the three stand, and going on asks for the fourth.
// Invariant: an answer to an older list changes nothing, and a stopped list still takes the step under way.
import { byGain, type Gain, type ArrangedMatPlan } from "#core/hall";
import type { GainsJob, GainsReply } from "./gains-messages.ts";

export type GainsList = {
  readonly id: number;
  readonly job: GainsJob;
  readonly state: "running" | "stopped" | "done" | "failed";
  /** how many changes there are to try; null until it is known */
  readonly total: number | null;
  readonly leftOut: readonly string[];
  /** in the order in which they came; the most gained first when all are there */
  readonly gains: readonly Gain<ArrangedMatPlan>[];
};

export function newGainsList(id: number, job: GainsJob): GainsList {
  return { id, job, state: "running", total: null, leftOut: [], gains: [] };
}

/** The list after a reply of the worker. */
export function heardGain(list: GainsList, reply: GainsReply): GainsList {
  if (reply.id !== list.id) return list;
  switch (reply.kind) {
    case "begun":
      return { ...list, total: reply.total, leftOut: reply.leftOut };
    case "gain":
      return { ...list, gains: [...list.gains, reply.gain] };
    case "done":
      return { ...list, state: "done", gains: byGain(list.gains) };
    case "failed":
      return { ...list, state: "failed" };
  }
}

/** What the list says so far, as one sentence. */
export function gainsInShort({ state, total, gains }: GainsList): string {
  switch (state) {
    case "running":
      return total === null
        ? "Looking for what can be changed."
        : `${gains.length} of ${changes(total)} tried so far.`;
    case "stopped":
      return `Stopped after ${gains.length} of ${changes(total ?? 0)}. ${mostGained(gains)}`;
    case "done":
      return gains.length === 0 ? "There is nothing to try." : mostGained(gains);
    case "failed":
      return "What would gain a mat could not be worked out on this device.";
  }
}

function mostGained(gains: readonly Gain<ArrangedMatPlan>[]): string {
  const [best] = byGain(gains);
  if (best === undefined) return "";
  if (best.gain <= 0)
    return gains.length === 1
      ? "The one change that was tried gains nothing."
      : `None of the ${gains.length} changes tried gains a mat.`;
  return `${best.says} gains ${best.gain === 1 ? "1 mat" : `${best.gain} mats`}, the most of ${changes(gains.length)}.`;
}

function changes(count: number): string {
  return count === 1 ? "1 change" : `${count} changes`;
}
