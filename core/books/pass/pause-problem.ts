import { type Problem, problem, type Writer } from "#core/words";
import type { PassExtended, PassPaused, PassResumed } from "./pass-event.ts";
import type { PassState } from "./pass-state.ts";

/** Why a pass cannot be paused, taken up again or given a later use-by like this. */
export function pauseProblem(
  state: PassState,
  event: PassPaused | PassResumed | PassExtended,
  writer: Writer,
): Problem | null {
  switch (event.kind) {
    case "paused":
      return pausedProblem(state, event, writer);
    case "resumed":
      return resumedProblem(state, event, writer);
    case "extended":
      return event.useBy > state.useBy ? null : notLater(state, writer);
  }
}

function pausedProblem(state: PassState, { from }: PassPaused, writer: Writer): Problem | null {
  if (state.pausedFrom !== null) {
    const says = `This pass is paused already, from ${writer.day(state.pausedFrom)}.`;
    return problem("pass-already-paused", "from", says, "End that pause before another begins.");
  }
  if (state.left === 0 || from > state.useBy || from < state.soldOn) {
    const says =
      state.left === 0
        ? "Nothing is left on this pass to pause."
        : `This pass counts from ${writer.day(state.soldOn)} until ${writer.day(state.useBy)}.`;
    return problem("pass-nothing-to-pause", "from", says, "Pause it from a day on which it counts.");
  }
  return heldProblem(state, from, writer) ?? oftenProblem(state);
}

function heldProblem(state: PassState, from: string, writer: Writer): Problem | null {
  const held = state.promised.filter(({ on }) => on >= from);
  const days = held.map(({ on }) => writer.day(on));
  if (held.length === 0) return null;
  const says = `Out of this pass ${held.length === 1 ? "a place is" : "places are"} held on ${days.join(", ")}.`;
  return problem("pass-held-in-pause", "from", says, "Give those up first, or begin the pause after them.");
}

function oftenProblem({ terms, pauses }: PassState): Problem | null {
  if (terms.pauses === null || pauses < terms.pauses) return null;
  const often = terms.pauses === 1 ? "once" : `${terms.pauses} times`;
  const says =
    terms.pauses === 0
      ? "By its terms this pass cannot be paused."
      : `By its terms this pass can be paused ${often}, and it has been.`;
  return problem("pass-pauses-used-up", "from", says, "Give it a later use-by if you want to be kind.");
}

function resumedProblem(state: PassState, { on, useBy }: PassResumed, writer: Writer): Problem | null {
  if (state.pausedFrom === null)
    return problem("pass-not-paused", "on", "This pass is not paused.", "There is nothing to take up again.");
  if (on < state.pausedFrom) {
    const says = `The pause begins on ${writer.day(state.pausedFrom)}.`;
    return problem("pass-resumed-early", "on", says, "Take it up again on that day or later.");
  }
  return useBy < state.useBy ? notLater(state, writer) : null;
}

function notLater(state: PassState, writer: Writer): Problem {
  const says = `The use-by of this pass is ${writer.day(state.useBy)}; it only ever moves to a later day.`;
  return problem("pass-use-by-not-later", "useBy", says, "Give a later day.");
}
