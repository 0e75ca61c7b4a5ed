import { type Problem, problem, type Writer } from "#core/words";
import type { PassPromised, PassUsed } from "./pass-event.ts";
import { freeOf, type PassState } from "./pass-state.ts";

type Meeting = PassPromised | PassUsed;

/**
 * Why a class of the pass cannot be spoken for, or taken off, for this session. What was spoken for in time may
 * be taken off on the day, whatever happened since; `on` is the day of the session, so that a register which
 * comes in late from the hall counts by its evening.
 */
export function meetingProblem(state: PassState, event: Meeting, writer: Writer): Problem | null {
  if (state.used.some(({ session }) => session === event.session)) return twice();
  const spokenFor = state.promised.some(({ session }) => session === event.session);
  if (spokenFor) return event.kind === "promised" ? twice() : null;
  return (
    validProblem(state, event) ??
    pausedProblem(state, event, writer) ??
    runOutProblem(state, event, writer) ??
    usedUpProblem(state)
  );
}

function twice(): Problem {
  const says = "A class of this pass is taken for that session already.";
  const next = "One person is one class: use another pass for somebody else.";
  return problem("pass-twice-for-session", "session", says, next);
}

function validProblem(state: PassState, event: Meeting): Problem | null {
  const next = "Take a single place, another pass, or swap a session of the block for this one.";
  if (state.form === "block" && !state.sessions.includes(event.session))
    return problem("pass-not-for-session", "session", "This session is not one of the block's.", next);
  if (state.valid === "all" || state.valid.includes(event.class)) return null;
  return problem("pass-not-for-class", "class", "This pass is not good for this class.", next);
}

function pausedProblem(state: PassState, { on }: Meeting, writer: Writer): Problem | null {
  if (state.pausedFrom === null || on < state.pausedFrom) return null;
  const says = `This pass is paused from ${writer.day(state.pausedFrom)}.`;
  return problem("pass-paused", "pass", says, "End the pause first; its use-by moves with it.");
}

/** A block is good for its sessions by name, also for one that was swapped to after its last day. */
function runOutProblem(state: PassState, { on }: Meeting, writer: Writer): Problem | null {
  if (state.form === "block" && state.expired === 0) return null;
  if (on <= state.useBy && state.expired === 0) return null;
  const says = `The last day of this pass ${state.expired > 0 ? "was" : "is"} ${writer.day(state.useBy)}.`;
  const next = "Take a single place, or give it a later use-by first if you want to be kind.";
  return problem("pass-past-use-by", "pass", says, next);
}

function usedUpProblem(state: PassState): Problem | null {
  if (freeOf(state) > 0) return null;
  const held = state.promised.length;
  const says =
    held === 0
      ? `No class is left of the ${state.size} on this pass.`
      : `All ${state.left} classes left on this pass are spoken for by places ahead.`;
  const next = "Take a single place or sell another pass.";
  return problem(
    "pass-used-up",
    "pass",
    held === 1 ? "The one class left is spoken for by a place ahead." : says,
    next,
  );
}
