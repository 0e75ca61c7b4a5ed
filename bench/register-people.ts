import type { RecordStore } from "#app/ports";
import { act, type DoAskInput, turns } from "#app/record";

type Session = { readonly id: string; readonly date: string; readonly starts: string };

/** The doings that are measured, as the server does them. Whatever is refused throws. */
export type Doer = {
  readonly open: (sessions: readonly Session[]) => Promise<void>;
  readonly meet: (person: number) => Promise<void>;
  readonly take: (session: string, place: string, person: number) => Promise<void>;
  readonly mark: (session: string, place: string) => Promise<void>;
};

export function doerOn(store: RecordStore, practice: string, mats: number): Doer {
  const recorder = {
    store,
    now: () => "2026-12-01T12:00:00Z",
    inTurn: turns(),
    seal: () => "sealed",
  };
  let actions = 0;
  const must = async (what: DoAskInput): Promise<void> => {
    actions += 1;
    const action = `bench-${String(actions).padStart(8, "0")}`;
    const done = await act(recorder, { practice, action, by: "teacher", locale: "en-GB", do: what });
    if (!done.ok) throw new Error(JSON.stringify(done.problems));
  };
  return {
    open: (sessions) =>
      must({
        kind: "open sessions",
        class: "tuesday",
        name: "Tuesday evening",
        sessions: [...sessions],
        zone: "Europe/London",
        minutes: 60,
        hall: "tithe-barn-hall",
        capacity: mats,
        posted: 60,
        currency: "GBP",
        single: 1000,
        concession: 800,
        notice: { kind: "elapsed", hours: 24 },
        firstLateWaived: true,
      }),
    meet: (person) =>
      must({ kind: "meet person", person: personOf(person), contact: { name: `Person ${person}` } }),
    take: (session, place, person) =>
      must({
        kind: "take place",
        session,
        people: [{ place, person: personOf(person), how: "single", paid: { amount: 1000, by: "cash" } }],
      }),
    mark: (session, place) => must({ kind: "mark", session, place, as: "attended" }),
  };
}

function personOf(number: number): string {
  return `person-${number}`;
}
