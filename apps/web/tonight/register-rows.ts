import type { PassState } from "#core/books";
import { paidFor, type Place, type PlaceKind, type SessionState, takesMat } from "#core/roll";
import type { Writer } from "#core/words";
import type { Lookup } from "../record/lookup.ts";

/** One person on the register. */
export type RegisterRow = {
  readonly place: Place;
  readonly name: string;
  /** has not been to a class before, as far as this device knows */
  readonly isNew: boolean;
  /** a dot: speak with the teacher first; why stands nowhere here */
  readonly speak: boolean;
  /** "single, £10.00 by cash" */
  readonly how: string;
  /** still to be paid, in minor units */
  readonly owes: number;
  readonly emergency: string;
};

/** Everybody who has or had a place, in the order of their names. */
export function registerRows(
  id: string,
  session: SessionState,
  look: Lookup,
  writer: Writer,
): readonly RegisterRow[] {
  const order = new Intl.Collator("en");
  return session.places
    .map((place) => rowOf(id, session, place, look, writer))
    .sort((a, b) => order.compare(a.name, b.name));
}

function rowOf(id: string, session: SessionState, place: Place, look: Lookup, writer: Writer): RegisterRow {
  const person = look.person(place.person);
  const contact = person?.contact;
  return {
    place,
    name: nameOf(look, place.person),
    isNew: person !== undefined && isNewTo(id, session, place.person, person.since, look),
    speak: person?.healthForm?.speak === true,
    how: howWords(session, place, look, writer),
    owes: owesFor(place),
    emergency: [contact?.emergencyName, contact?.emergencyPhone].filter(Boolean).join(", "),
  };
}

/** A name, or what stands in its place for somebody erased or not at hand. */
export function nameOf(look: Lookup, person: string): string {
  const known = look.person(person);
  if (known === undefined) return "Name not on this device";
  return known.erased || known.contact.name === "" ? "Name erased" : known.contact.name;
}

/** What is still to be paid for a place that is used or charged, in minor units. */
export function owesFor(place: Place): number {
  const goes =
    takesMat(place) || place.state === "not come" || (place.state === "given up late" && !place.waived);
  return goes && place.pass === null ? Math.max(0, place.price - paidFor(place)) : 0;
}

const FORTNIGHT = 14 * 86_400_000;

/** Written down within a fortnight before, and on no other register of that fortnight as having come. */
function isNewTo(id: string, session: SessionState, person: string, since: string, look: Lookup): boolean {
  if (Date.parse(session.starts) - Date.parse(since) > FORTNIGHT) return false;
  return !look.sessions.some(
    (other) =>
      other.id !== id &&
      other.state.starts < session.starts &&
      other.state.places.some((it) => it.person === person && it.state === "attended"),
  );
}

// four weeks: when the first warning about a use-by goes out
const USE_BY_NEAR = 28 * 86_400_000;

const kinds: Readonly<Record<PlaceKind, string>> = {
  single: "single",
  pass: "pass",
  block: "block",
  concession: "concession",
  free: "free",
  guest: "guest",
};

function howWords(session: SessionState, place: Place, look: Lookup, writer: Writer): string {
  const kind = kinds[place.how];
  const walked = place.walkedIn ? ", walked in" : "";
  if (place.pass !== null)
    return `${kind}${passWords(session, place, look.pass(place.pass), writer)}${walked}`;
  if (place.price === 0) return `${kind}${walked}`;
  return `${kind}, ${paidWords(session, place, writer)}${walked}`;
}

function passWords(session: SessionState, place: Place, pass: PassState | undefined, writer: Writer): string {
  if (pass === undefined) return "";
  const left = place.state === "held" ? pass.left - 1 : pass.left;
  const count = left === 1 ? "1 left" : `${left} left`;
  const unpaid = pass.unpaid > 0 ? `, ${writer.money(pass.unpaid, pass.currency)} of it not paid` : "";
  const near = Date.parse(pass.useBy) - Date.parse(session.date) <= USE_BY_NEAR;
  const soon = near && left > 0 ? `, use by ${writer.day(pass.useBy)}` : "";
  return `, ${count} after this${soon}${unpaid}`;
}

function paidWords(session: SessionState, place: Place, writer: Writer): string {
  const paid = paidFor(place);
  const price = writer.money(place.price, session.currency);
  if (paid === 0) return `${price} not paid`;
  const by = [...new Set(place.paid.map((it) => it.by))].join(" and ");
  const money = writer.money(paid, session.currency);
  return paid < place.price ? `${money} of ${price} by ${by}` : `${money} by ${by}`;
}
