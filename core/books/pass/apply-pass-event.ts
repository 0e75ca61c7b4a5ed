import type {
  PassEvent,
  PassRefunded,
  PassReturned,
  PassSold,
  PassSwapped,
  PassUsed,
  PassPromised,
} from "./pass-event.ts";
import { freeOf, type PassState } from "./pass-state.ts";

/**
 * The pass after one more event; null before its sale. What a person may not do is asked of `passProblem`
 * first: an event that cannot be, like a class taken off an empty pass, throws here.
 */
export function applyPassEvent(state: PassState | null, event: PassEvent): PassState {
  if (event.kind === "sold") return sold(state, event);
  if (state === null) throw new RangeError(`${event.kind} before the sale`);
  switch (event.kind) {
    case "promised":
      return promised(state, event);
    case "freed":
      return { ...state, promised: state.promised.filter(({ session }) => session !== event.session) };
    case "used":
      return used(state, event);
    case "returned":
      return returned(state, event);
    case "swapped":
      return swapped(state, event);
    case "paid":
      return { ...state, unpaid: notBelowNought(state.unpaid - event.amount, "paid") };
    case "paused":
      return { ...state, pausedFrom: event.from, pauses: state.pauses + 1 };
    case "resumed":
      return { ...state, pausedFrom: null, useBy: event.useBy };
    case "extended":
      return { ...state, useBy: event.useBy, expired: 0, left: state.left + state.expired };
    case "transferred":
      return { ...state, holder: event.to };
    case "refunded":
      return refunded(state, event);
    case "expired":
      return {
        ...state,
        expired: state.expired + event.classes,
        left: notBelowNought(state.left - event.classes, "expired"),
      };
  }
}

/** Of what is given back, the part that lets go what is still unpaid, and the part that is paid out. */
export function splitRefund(
  unpaid: number,
  amount: number,
): { readonly letGo: number; readonly paidOut: number } {
  const letGo = Math.min(unpaid, amount);
  return { letGo, paidOut: amount - letGo };
}

function sold(state: PassState | null, event: PassSold): PassState {
  if (state !== null) throw new RangeError(`sold twice: ${event.pass}`);
  const { kind: _, on: soldOn, paid, ...bought } = event;
  return {
    ...bought,
    soldOn,
    promised: [],
    used: [],
    refunded: 0,
    expired: 0,
    left: event.size,
    unpaid: paid === "later" ? event.price : 0,
    letGo: 0,
    paidBack: 0,
    pausedFrom: null,
    pauses: 0,
  };
}

function promised(state: PassState, { session, class: taken, on }: PassPromised): PassState {
  if (freeOf(state) < 1) throw new RangeError(`promised, but nothing is free: ${session}`);
  return { ...state, promised: [...state.promised, { session, class: taken, on }] };
}

function used(state: PassState, { session, class: taken, on, why }: PassUsed): PassState {
  return {
    ...state,
    promised: state.promised.filter((it) => it.session !== session),
    used: [...state.used, { session, class: taken, on, why }],
    left: notBelowNought(state.left - 1, "used"),
  };
}

function returned(state: PassState, { session }: PassReturned): PassState {
  const rest = state.used.filter((use) => use.session !== session);
  if (rest.length !== state.used.length - 1) throw new RangeError(`returned, but not used: ${session}`);
  return { ...state, used: rest, left: state.left + 1 };
}

function swapped(state: PassState, { from, to }: PassSwapped): PassState {
  if (!state.sessions.includes(from)) throw new RangeError(`swapped, but not in the block: ${from}`);
  return { ...state, sessions: state.sessions.map((session) => (session === from ? to : session)) };
}

function refunded(state: PassState, { classes, amount, sessions = [] }: PassRefunded): PassState {
  const { letGo, paidOut } = splitRefund(state.unpaid, amount);
  return {
    ...state,
    refunded: state.refunded + classes,
    left: notBelowNought(state.left - classes, "refunded"),
    unpaid: state.unpaid - letGo,
    letGo: state.letGo + letGo,
    paidBack: state.paidBack + paidOut,
    sessions: state.sessions.filter((session) => !sessions.includes(session)),
  };
}

function notBelowNought(value: number, what: string): number {
  if (!Number.isSafeInteger(value) || value < 0) throw new RangeError(`${what} leaves ${value}`);
  return value;
}
