import { type Problem, problem, type Writer } from "#core/words";
import { meetingProblem } from "./meeting-problem.ts";
import { moneyProblem } from "./money-problem.ts";
import type { PassEvent, PassExpired, PassReturned, PassSwapped, PassTransferred } from "./pass-event.ts";
import { freeOf, type PassState } from "./pass-state.ts";
import { pauseProblem } from "./pause-problem.ts";
import { soldProblem } from "./sold-problem.ts";

/**
 * Why an event may not happen to the pass as it stands, or null when it may. Asked before the event is kept;
 * what passes here never throws in `applyPassEvent`. Problems: all that begin with "pass-".
 */
export function passProblem(state: PassState | null, event: PassEvent, writer: Writer): Problem | null {
  if (event.kind === "sold") return soldProblem(state, event);
  if (state === null) {
    const next = "Look for it under the holder's name, or sell it first.";
    return problem("pass-unknown", "pass", "There is no such pass.", next);
  }
  switch (event.kind) {
    case "promised":
    case "used":
      return meetingProblem(state, event, writer);
    case "returned":
      return returnedProblem(state, event);
    case "swapped":
      return swappedProblem(state, event);
    case "paid":
    case "refunded":
      return moneyProblem(state, event, writer);
    case "paused":
    case "resumed":
    case "extended":
      return pauseProblem(state, event, writer);
    case "transferred":
      return transferredProblem(state, event);
    case "expired":
      return expiredProblem(state, event, writer);
    case "freed":
      return null;
  }
}

function returnedProblem(state: PassState, { session }: PassReturned): Problem | null {
  if (state.used.some((use) => use.session === session)) return null;
  const says = "No class of this pass was taken for that session, so none can come back.";
  return problem("pass-not-used", "session", says, "Look at the dates on which the pass was used.");
}

function swappedProblem(state: PassState, { from, to }: PassSwapped): Problem | null {
  const taken = (session: string) => state.used.some((use) => use.session === session);
  const next = "Choose a session of the block that is still to come, and another one to take instead.";
  if (!state.sessions.includes(from) || taken(from))
    return problem("pass-not-in-block", "from", "That session is not one of the block's to come.", next);
  if (state.promised.some(({ session }) => session === from)) {
    const says = "A place is held in that session out of this block.";
    return problem("pass-held-ahead", "from", says, "Give that place up first, then take the other date.");
  }
  if (state.sessions.includes(to) || taken(to))
    return problem("pass-already-in-block", "to", "The block has that session already.", next);
  return null;
}

function transferredProblem(state: PassState, { to }: PassTransferred): Problem | null {
  if (!state.terms.transferable) {
    const says = "By its terms this pass cannot be handed on.";
    const next = "Give the rest back and sell the other person one, or decide kindly and note why.";
    return problem("pass-not-transferable", "to", says, next);
  }
  if (state.promised.length > 0) {
    const says = `${counted(state.promised.length, "place")} ahead ${state.promised.length === 1 ? "is" : "are"} held out of this pass.`;
    return problem(
      "pass-held-ahead",
      "to",
      says,
      "Give those places up first, or hand the pass on after them.",
    );
  }
  if (state.left > 0 && to !== state.holder) return null;
  const says = state.left === 0 ? "Nothing is left on this pass." : "It is this person's pass already.";
  return problem("pass-nothing-to-hand-on", "to", says, "Choose another pass or another person.");
}

function expiredProblem(state: PassState, { on, classes }: PassExpired, writer: Writer): Problem | null {
  if (state.pausedFrom !== null || on <= state.useBy) {
    const says =
      state.pausedFrom === null
        ? `This pass counts until ${writer.day(state.useBy)}.`
        : "This pass is paused, so it does not run out.";
    return problem("pass-still-good", "on", says, "Wait until its last day is over.");
  }
  if (Number.isInteger(classes) && classes >= 1 && classes <= freeOf(state)) return null;
  const says = `${classes} cannot run out of the ${counted(state.left, "class", "classes")} left.`;
  return problem(
    "pass-expired-too-many",
    "classes",
    says,
    "Count the classes left that no place is held for.",
  );
}

function counted(count: number, one: string, more = `${one}s`): string {
  return `${count} ${count === 1 ? one : more}`;
}
