import { type ArrangedMatPlan, byGain, type Gain } from "#core/hall";
import type { GainsJob } from "./gains-worker.ts";
import type { StepList } from "./step-list.ts";

export type GainsList = StepList<GainsJob, Gain<ArrangedMatPlan>>;

/** What the list says so far, as one sentence. */
export function gainsInShort({ state, total, items: gains }: GainsList): string {
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
