import { type ClassDocument, teachingDates } from "#core/class";
import type { HallDocument } from "#core/hall";
import { type CancelAsked, type Follows, whatFollows } from "#app/record";
import { movedByClosure } from "#core/books";
import type { CancelReason } from "#core/roll";
import { type CurrencyCode, isCurrency } from "#core/words";
import type { PracticeHere } from "../drafts/use-practice.ts";
import type { RegisterHere } from "../tonight/register-here.ts";
import { type SessionEvening, sessionEvening } from "./session-evening.ts";

/** Everything that the parts of this page share. */
export type WrongHere = RegisterHere & {
  readonly document: ClassDocument | undefined;
  readonly hall: HallDocument | undefined;
  readonly currency: CurrencyCode;
  readonly evening: SessionEvening | null;
};

export function wrongHere(here: RegisterHere, { halls, classes }: PracticeHere): WrongHere {
  const { session } = here;
  const document = classes.find(({ id }) => id === session.class)?.document;
  const hall = halls.find(({ id }) => id === session.hall)?.document;
  const { currency } = session;
  if (!isCurrency(currency)) throw new Error(`a session in no currency: ${currency}`);
  return {
    ...here,
    document,
    hall,
    currency,
    evening: sessionEvening(document, hall, currency, session.date),
  };
}

/** What cancelling would ask for: the later dates of the class, and every pass that loses a date by it. */
export function cancelAsked({ id, session, document, record }: WrongHere, why: CancelReason): CancelAsked {
  const later = document === undefined ? [] : teachingDates(document).filter((date) => date > session.date);
  const held = new Set(session.places.flatMap(({ pass }) => (pass === null ? [] : [pass])));
  const closed = { session: id, class: session.class, date: session.date };
  const passes = record.look.passes.filter(
    ({ id: pass, state }) => !held.has(pass) && movedByClosure(state, closed),
  );
  return { session: id, why, teachingDates: later, passes: passes.map(({ id: pass }) => pass) };
}

export function followsHere(here: WrongHere, why: CancelReason): Follows | undefined {
  const { session, pass } = here.record.look;
  return whatFollows({ session, pass, writer: here.writer }, cancelAsked(here, why));
}
