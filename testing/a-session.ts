import { applySession, type PlaceAsked, holdPlaces, type SessionState } from "#core/roll";

/** Tuesday 1 December 2026, 18:30 in London (UTC in winter), with so many mats and nobody in it. */
export function aSession(capacity: number): SessionState {
  return applySession(null, {
    kind: "opened",
    class: "tuesday",
    name: "Slow Tuesday",
    date: "2026-12-01",
    starts: "2026-12-01T18:30:00Z",
    zone: "Europe/London",
    minutes: 60,
    hall: "tithe-barn",
    capacity,
    posted: 60,
    currency: "GBP",
    single: 1000,
    concession: 800,
    notice: { kind: "elapsed", hours: 24 },
    firstLateWaived: true,
  });
}

/** A single asked for by a person at ten pounds, not paid yet; the place is called after her. */
export function asked(person: string, place = `pl-${person}`): PlaceAsked {
  return { place, person, how: "single", pass: null, price: 1000, paid: null };
}

/** The session after parties of one or two asked in turn, each held or waiting. Throws where one may not ask. */
export function afterAsking(
  session: SessionState,
  now: string,
  ...parties: readonly (readonly [string] | readonly [string, string])[]
): SessionState {
  return parties.reduce((before, [one, other]) => {
    const both = other === undefined ? ([asked(one)] as const) : ([asked(one), asked(other)] as const);
    const done = holdPlaces(before, both, now);
    if (!done.ok) throw new Error(done.problems.map(({ says }) => says).join(" "));
    return done.value.events.reduce<SessionState>(applySession, before);
  }, session);
}
