import type { KeptStream, PersonExport, RecordStore } from "#app/ports";
import type { PassState } from "#core/books";
import type { PersonEvent, PersonState, SessionState } from "#core/roll";
import { bad, good, problem, type Result } from "#core/words";
import { type NamedSession, paymentsOf } from "./export-payments.ts";
import { moneyTextOf } from "./money-text.ts";
import { readAll } from "./read-everybody.ts";

export type ExportOrder = {
  readonly practice: string;
  readonly person: string;
  /** ISO 8601 instant, UTC */
  readonly now: string;
  /** opens the note about health, where that was asked for; null leaves it closed */
  readonly openNote: ((sealed: string) => Result<string>) | null;
};

/**
 * Everything that is kept about one person, to be handed over. Problems: "person-unknown", also for somebody who was
 * erased; "note-sealed" where the note was asked for and does not open; those of the store.
 */
export async function exportPerson(store: RecordStore, order: ExportOrder): Promise<Result<PersonExport>> {
  const { practice, person } = order;
  const found = await store.streams(practice, [`person/${person}`]);
  if (!found.ok) return found;
  // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- the name holds the kind
  const state = found.value[0]?.state as PersonState | undefined;
  if (state === undefined || state.erased) return bad(unknown());
  const consents = await consentsOf(store, order);
  const note = await noteOf(store, order);
  const sessions = await readAll(store, practice, "session");
  const passes = await readAll(store, practice, "pass", person);
  if (!consents.ok) return consents;
  if (!note.ok) return note;
  if (!sessions.ok) return sessions;
  if (!passes.ok) return passes;
  const payments = await paymentsOf(store, order, hers(sessions.value, person), passes.value);
  if (!payments.ok) return payments;
  const { since, contact, healthForm, late, mayCover } = state;
  return good({
    format: "hallful/person@1",
    written: order.now,
    person,
    since,
    contact,
    consents: consents.value,
    healthForm: healthForm === null ? null : formOf(healthForm, note.value),
    late: { times: late.times, letGo: late.waived },
    mayCover,
    places: named(sessions.value).flatMap((it) => placesIn(it, person)),
    waiting: named(sessions.value)
      .filter(({ session }) => session.waiting.some((it) => it.person === person))
      .map(inShort),
    covered: named(sessions.value)
      .filter(({ session }) => session.cover?.by === person)
      .map(inShort),
    passes: passes.value.map(passOf),
    payments: payments.value,
  });
}

type Note = { readonly opened: boolean; readonly text: string | null };

async function noteOf(
  store: RecordStore,
  { practice, person, openNote }: ExportOrder,
): Promise<Result<Note>> {
  if (openNote === null) return good({ opened: false, text: null });
  const sealed = await store.sealed(practice, person);
  if (!sealed.ok) return sealed;
  if (sealed.value === null) return good({ opened: true, text: null });
  const opened = openNote(sealed.value);
  return opened.ok ? good({ opened: true, text: opened.value }) : opened;
}

async function consentsOf(
  store: RecordStore,
  { practice, person }: ExportOrder,
): Promise<Result<PersonExport["consents"]>> {
  const events = await store.events(practice, `person/${person}`);
  if (!events.ok) return events;
  return good(
    events.value.flatMap(({ body, made }) => {
      // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- the stream is a person's
      const event = body as PersonEvent;
      if (event.kind !== "consented") return [];
      return [{ to: event.to, given: event.given, at: made, wording: event.wording }];
    }),
  );
}

function formOf({ at, reviewBy, speak }: NonNullable<PersonState["healthForm"]>, note: Note) {
  return { at, reviewBy, speakFirst: speak, note };
}

function named(streams: readonly KeptStream[]): readonly NamedSession[] {
  return streams.map(({ stream, state }) => ({
    id: stream.slice("session/".length),
    // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- the list is of sessions
    session: state as SessionState,
  }));
}

/** The sessions in which somebody has, or had, a place or was let in. */
function hers(streams: readonly KeptStream[], person: string): readonly NamedSession[] {
  return named(streams).filter(({ session }) =>
    [...session.places, ...session.cameOver].some((it) => it.person === person),
  );
}

function inShort({ id, session: { name, date } }: NamedSession) {
  return { session: id, name, date };
}

function placesIn(it: NamedSession, person: string): PersonExport["places"] {
  const { places, cameOver, currency } = it.session;
  const held = places.filter((place) => place.person === person);
  const letIn = cameOver.filter((place) => place.person === person);
  return [
    ...held.map(({ how, state, waived, price, pass }) => ({
      ...inShort(it),
      how,
      state,
      letGo: waived,
      price: moneyTextOf(price, currency),
      currency,
      pass,
    })),
    ...letIn.map(({ paid }) => ({
      ...inShort(it),
      how: "single",
      state: "attended",
      letGo: false,
      price: moneyTextOf(paid?.amount ?? 0, currency),
      currency,
      pass: null,
    })),
  ];
}

function passOf({ state }: KeptStream): PersonExport["passes"][number] {
  // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- the list is of passes
  const pass = state as PassState;
  const { form, name, soldOn, size, price, currency, left, useBy, unpaid, pausedFrom, used } = pass;
  return {
    pass: pass.pass,
    form,
    name,
    soldOn,
    size,
    price: moneyTextOf(price, currency),
    currency,
    left,
    useBy,
    stillToPay: moneyTextOf(unpaid, currency),
    pausedFrom,
    usedOn: used.map(({ on }) => on),
  };
}

function unknown() {
  const says = "There is no such person in the record.";
  return problem("person-unknown", "person", says, "Look for the name in the list of people.");
}
