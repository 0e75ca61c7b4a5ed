import { dateIn } from "#kernels/calendar";
import type { KeptEvent, KeptStream, PersonExport, RecordStore } from "#app/ports";
import { applyPassEvent, moneyKept, type PassEvent, type PassState } from "#core/books";
import type { Paid, SessionEvent, SessionState } from "#core/roll";
import { good, type Result, togetherInOrder } from "#core/words";
import { moneyTextOf } from "./money-text.ts";

export type NamedSession = { readonly id: string; readonly session: SessionState };
type Payments = PersonExport["payments"];

/**
 * What somebody paid and was paid back, by date: for places in these sessions, and for these passes. What was paid for
 * a pass before it was handed on to her is with the one who paid. Problems: those of the store.
 */
export async function paymentsOf(
  store: RecordStore,
  { practice, person }: { readonly practice: string; readonly person: string },
  sessions: readonly NamedSession[],
  passes: readonly KeptStream[],
): Promise<Result<Payments>> {
  const paidFor = sessions.filter(({ session }) => hasMoney(session, person));
  const read = await Promise.all([
    ...paidFor.map(async ({ id, session }) => {
      const events = await store.events(practice, `session/${id}`);
      return events.ok ? good(placePayments(session, person, events.value)) : events;
    }),
    ...passes.map(async ({ stream, state }) => {
      const events = await store.events(practice, stream);
      // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- the list is of passes
      return events.ok ? good(passPayments(state as PassState, person, events.value)) : events;
    }),
  ]);
  const all = togetherInOrder(read);
  if (!all.ok) return all;
  return good(all.value.flat().sort((one, other) => (one.on < other.on ? -1 : Number(one.on > other.on))));
}

function hasMoney({ places, cameOver }: SessionState, person: string): boolean {
  return (
    places.some((it) => it.person === person && it.paid.length > 0) ||
    cameOver.some((it) => it.person === person && it.paid !== null)
  );
}

function placePayments(session: SessionState, person: string, events: readonly KeptEvent[]): Payments {
  const own = new Set(session.places.filter((it) => it.person === person).map(({ id }) => id));
  return events.flatMap(({ body, made }) => {
    // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- the stream is a session's
    const paid = paidIn(body as SessionEvent, person, own);
    if (paid === null || paid.amount === 0) return [];
    const { name, currency, zone } = session;
    const amount = moneyTextOf(paid.amount, currency);
    return [{ on: dateIn(made, zone), what: name, amount, currency, by: paid.by }];
  });
}

function paidIn(event: SessionEvent, person: string, own: ReadonlySet<string>): Paid | null {
  if (event.kind === "held" || event.kind === "came over") return event.person === person ? event.paid : null;
  if ((event.kind !== "paid" && event.kind !== "paid back") || !own.has(event.place)) return null;
  return event.kind === "paid" ? event.paid : { ...event.paid, amount: -event.paid.amount };
}

/** What each event of a pass brought in or took out, while it was this person's. */
function passPayments({ name, currency }: PassState, person: string, events: readonly KeptEvent[]): Payments {
  let before: PassState | null = null;
  const payments: Payments[number][] = [];
  for (const { body } of events) {
    // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- the stream is a pass's
    const event = body as PassEvent;
    const after: PassState = applyPassEvent(before, event);
    const amount = moneyKept(after) - (before === null ? 0 : moneyKept(before));
    const by = meansOf(event);
    if (amount !== 0 && by !== null && after.holder === person)
      payments.push({ on: event.on, what: name, amount: moneyTextOf(amount, currency), currency, by });
    before = after;
  }
  return payments;
}

function meansOf(event: PassEvent): Paid["by"] | null {
  if (event.kind === "sold") return event.paid === "later" ? null : event.paid;
  return event.kind === "paid" || event.kind === "refunded" ? event.how : null;
}
