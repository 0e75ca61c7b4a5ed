import type { Paid, PlaceHeld, SessionEvent, SessionOpened } from "./session-event.ts";
import { type Place, placeIn, type PlaceState, type SessionState, type Waiting } from "./session-state.ts";

/**
 * The session after one more event. It does not ask whether the event was allowed: that was asked before the event
 * was kept. Throws on the first event not being "opened", and on a place or an entry that is not there.
 */
export function applySession(before: SessionState | null, event: SessionEvent): SessionState {
  if (event.kind === "opened") return openSession(event);
  if (before === null) throw new Error(`a session begins with being opened, not with: ${event.kind}`);
  switch (event.kind) {
    case "moved":
      return { ...before, date: event.date, starts: event.starts, hall: event.hall };
    case "resized":
      return { ...before, capacity: event.capacity };
    case "cancelled":
      return { ...before, cancelled: { why: event.why, movedTo: event.movedTo } };
    case "covered":
      return { ...before, cover: { by: event.by, fee: event.fee } };
    case "held":
      return hold(before, event);
    case "given up":
      return changed(before, event.place, { state: givenUp(event.late), waived: event.waived });
    case "marked":
      return changed(before, event.place, { state: event.as });
    case "let go":
      return changed(before, event.place, { waived: true });
    case "paid":
      return paid(before, event.place, event.paid);
    case "paid back":
      return paid(before, event.place, { ...event.paid, amount: -event.paid.amount });
    case "waiting":
      return { ...before, waiting: [...before.waiting, entryOf(event)] };
    case "stopped waiting":
      return stopWaiting(before, event.entry);
    case "offered":
      return offered(before, event.entry, event.until);
    case "came over":
      return { ...before, cameOver: [...before.cameOver, { ...over(event) }] };
    case "counted":
      return { ...before, heads: event.heads };
    case "register closed":
      return { ...before, closed: true };
  }
}

function openSession(event: SessionOpened): SessionState {
  const { kind: _, ...told } = event;
  return {
    ...told,
    cancelled: null,
    cover: null,
    places: [],
    waiting: [],
    cameOver: [],
    heads: null,
    closed: false,
  };
}

function hold(before: SessionState, event: PlaceHeld): SessionState {
  const { kind: _, place: id, entry, ...told } = event;
  const paid = told.paid === null ? [] : [told.paid];
  const place: Place = { ...told, id, paid, state: "held", waived: false };
  const after = { ...before, places: [...before.places, place] };
  return entry === null ? after : stopWaiting(after, entry);
}

function givenUp(late: boolean): PlaceState {
  return late ? "given up late" : "given up early";
}

function changed(before: SessionState, id: string, change: Partial<Place>): SessionState {
  if (!before.places.some((place) => place.id === id)) throw new Error(`no such place: ${id}`);
  const places = before.places.map((place) => (place.id === id ? { ...place, ...change } : place));
  return { ...before, places };
}

function paid(before: SessionState, id: string, part: Paid): SessionState {
  return changed(before, id, { paid: [...(placeIn(before, id)?.paid ?? []), part] });
}

function entryOf(event: SessionEvent & { readonly kind: "waiting" }): Waiting {
  return { entry: event.entry, person: event.person, with: event.with, offer: null };
}

/** Whoever waited together with this one waits alone from now on. */
function stopWaiting(before: SessionState, entry: string): SessionState {
  const left = before.waiting.filter((it) => it.entry !== entry);
  if (left.length === before.waiting.length) throw new Error(`nobody waits with the entry: ${entry}`);
  return { ...before, waiting: left.map((it) => (it.with === entry ? { ...it, with: null } : it)) };
}

function offered(before: SessionState, entry: string, until: string | null): SessionState {
  const waiting = before.waiting.map((it) => (it.entry === entry ? { ...it, offer: { until } } : it));
  return { ...before, waiting };
}

function over({ person, paid, why }: SessionEvent & { readonly kind: "came over" }) {
  return { person, paid, why };
}
