import { type Problem, problem, type Writer } from "#core/words";
import type { PassPaid, PassRefunded } from "./pass-event.ts";
import { freeOf, moneyKept, type PassState } from "./pass-state.ts";

/** Why an amount cannot be paid for a pass, or given back. */
export function moneyProblem(
  state: PassState,
  event: PassPaid | PassRefunded,
  writer: Writer,
): Problem | null {
  return event.kind === "paid" ? paidProblem(state, event, writer) : refundProblem(state, event, writer);
}

function paidProblem({ unpaid, currency }: PassState, { amount }: PassPaid, writer: Writer): Problem | null {
  if (Number.isInteger(amount) && amount > 0 && amount <= unpaid) return null;
  const says =
    unpaid === 0
      ? "Nothing is left to pay for this pass."
      : `${writer.money(unpaid, currency)} is left to pay for this pass.`;
  return problem("pass-paid-too-much", "amount", says, "Write down no more than that, or sell another pass.");
}

function refundProblem(state: PassState, event: PassRefunded, writer: Writer): Problem | null {
  return classesProblem(state, event) ?? amountProblem(state, event, writer) ?? sessionsProblem(state, event);
}

function classesProblem(state: PassState, { classes }: PassRefunded): Problem | null {
  const free = freeOf(state);
  if (Number.isInteger(classes) && classes >= 1 && classes <= free) return null;
  const held =
    state.promised.length === 0 ? "" : `, ${state.promised.length} of them spoken for by places ahead`;
  const says = `${state.left} of the classes are left${held}; ${classes} cannot be given back.`;
  return problem(
    "pass-refund-too-many",
    "classes",
    says,
    `Give back from 1 to ${free}, or give places up first.`,
  );
}

function amountProblem(state: PassState, { amount }: PassRefunded, writer: Writer): Problem | null {
  const most = state.unpaid + moneyKept(state);
  if (Number.isInteger(amount) && amount >= 0 && amount <= most) return null;
  const says = `At most ${writer.money(most, state.currency)} can be given back: no more came in for this pass or is still to be paid.`;
  return problem("pass-refund-too-much", "amount", says, "Give back that or less.");
}

function sessionsProblem(state: PassState, { classes, sessions }: PassRefunded): Problem | null {
  if (state.form === "pass") return null;
  const taken = new Set([...state.used, ...state.promised].map(({ session }) => session));
  const given = new Set(sessions ?? []);
  const sound = [...given].every((session) => state.sessions.includes(session) && !taken.has(session));
  if (given.size === classes && sound) return null;
  const says = `A block gives back sessions by name, and ${classes} of those to come ${classes === 1 ? "is" : "are"} wanted here.`;
  return problem("pass-refund-sessions", "sessions", says, "Name each session that is given back, once.");
}
