import { expect, test } from "vitest";
import * as fc from "fast-check";
import { afterAsking as after, aSession, asked } from "#testing";
import { good, type Result } from "#core/words";
import { acceptOffer, leaveWaiting } from "./answer-offer.ts";
import { applySession } from "./apply-session.ts";
import { cameOver, closeRegister, markPlace, walkIn } from "./at-the-door.ts";
import { giveUpPlace } from "./give-up-place.ts";
import { type Held, holdPlaces } from "./hold-place.ts";
import type { SessionEvent } from "./session-event.ts";
import { freeMats, placeOf, type SessionState, takesMat } from "./session-state.ts";
import { settleOffers } from "./settle-offers.ts";

const MORNING = "2026-12-01T10:00:00Z";

test("of three who ask for two mats the third waits (ROLL-1)", () => {
  const full = after(aSession(2), MORNING, ["ana"], ["ben"]);
  const third = holdPlaces(full, [asked("cleo")], MORNING);
  expect(third.ok && third.value.outcome).toBe("waiting");
});

test("two together wait while one mat is free, and each knows the other (ROLL-2)", () => {
  const one = after(aSession(2), MORNING, ["ana"]);
  const pair = holdPlaces(one, [asked("ben"), asked("cleo")], MORNING);
  expect(pair.ok && pair.value).toMatchObject({
    outcome: "waiting",
    events: [
      { entry: "pl-ben", with: "pl-cleo" },
      { entry: "pl-cleo", with: "pl-ben" },
    ],
  });
});

test("who has a place or waits is not put down twice (ROLL-3)", () => {
  const full = after(aSession(1), MORNING, ["ana"], ["ben"]);
  expect(codes(holdPlaces(full, [asked("ana")], MORNING))).toEqual(["place-already-held"]);
  expect(codes(holdPlaces(full, [asked("ben")], MORNING))).toEqual(["already-waiting"]);
});

test("a mat that came free is owed to who waits, not to who asks next (ROLL-4)", () => {
  const full = after(aSession(1), MORNING, ["ana"], ["ben"]);
  const freed = told(full, giveUpPlace(full, "pl-ana", { late: false, waived: false }));
  expect(freeMats(freed)).toBe(1);
  const next = holdPlaces(freed, [asked("cleo")], MORNING);
  expect(next.ok && next.value.outcome).toBe("waiting");
});

test("what was given up is not marked; a mark is taken back while a mat is free (ROLL-5, ROLL-6)", () => {
  const two = after(aSession(1), MORNING, ["ana"]);
  const away = told(two, markPlace(two, "pl-ana", "not come"));
  expect(freeMats(away)).toBe(1);
  const walked = told(away, walkIn(away, asked("ben")));
  expect(codes(markPlace(walked, "pl-ana", "attended"))).toEqual(["no-mat-left"]);
  const gone = told(two, giveUpPlace(two, "pl-ana", { late: true, waived: false }));
  expect(codes(markPlace(gone, "pl-ana", "attended"))).toEqual(["place-given-up"]);
});

test("somebody let in beyond the mats is beside the places (ROLL-7)", () => {
  const full = after(aSession(1), MORNING, ["ana"]);
  expect(codes(walkIn(full, asked("ben")))).toEqual(["no-mat-left"]);
  const over = applySession(full, cameOver("ben", { amount: 1000, by: "cash" }));
  expect(over.places).toHaveLength(1);
  expect(over.cameOver).toMatchObject([{ person: "ben", paid: { amount: 1000 } }]);
});

test("a closed register has nobody unmarked, and closes once (ROLL-8)", () => {
  const two = after(aSession(3), MORNING, ["ana"], ["ben"]);
  const marked = told(two, markPlace(two, "pl-ana", "attended"));
  const closed = closeRegister(marked).reduce<SessionState>(applySession, marked);
  expect(closed.places.map(({ state }) => state)).toEqual(["attended", "not come"]);
  expect(closeRegister(closed)).toEqual([]);
});

test("whatever is done in whatever order, mats taken and promised are never more than there are (ROLL-1)", () => {
  const names = fc.constantFrom("ana", "ben", "cleo", "dara", "eli", "finn");
  const step = fc.record({ what: fc.constantFrom(...STEPS), who: names, other: names, hour: fc.nat(9) });
  fc.assert(
    fc.property(fc.nat(4), fc.array(step, { maxLength: 40 }), (capacity, steps) => {
      const left = steps.reduce<SessionState>(take, aSession(capacity));
      expect(freeMats(left)).toBeGreaterThanOrEqual(0);
      expect(left.places.filter(takesMat).length).toBeLessThanOrEqual(capacity);
      const once = new Set(left.places.filter(takesMat).map(({ person }) => person));
      expect(once.size).toBe(left.places.filter(takesMat).length);
    }),
  );
});

const STEPS = ["hold", "pair", "accept", "leave", "give up", "mark", "away", "walk in"] as const;
type Step = { what: (typeof STEPS)[number]; who: string; other: string; hour: number };

function take(session: SessionState, step: Step, turn: number): SessionState {
  const now = `2026-12-01T${String(9 + step.hour).padStart(2, "0")}:00:00Z`;
  const settled = settleOffers(session, now).reduce<SessionState>(applySession, session);
  expect(settleOffers(settled, now)).toEqual([]);
  return told(settled, decided(settled, step, now, String(turn)));
}

function decided(session: SessionState, { what, who, other }: Step, now: string, turn: string): Decided {
  const it = asked(who, `${who}-${turn}`);
  const place = placeOf(session, who)?.id ?? "nobody";
  const entry = session.waiting.find(({ person }) => person === who)?.entry ?? "nobody";
  switch (what) {
    case "hold":
      return eventsOf(holdPlaces(session, [it], now));
    case "pair":
      return who === other
        ? eventsOf(holdPlaces(session, [it], now))
        : eventsOf(holdPlaces(session, [it, asked(other, `${other}-${turn}`)], now));
    case "accept":
      return acceptOffer(session, entry, it, now);
    case "leave":
      return leaveWaiting(session, entry);
    case "give up":
      return giveUpPlace(session, place, { late: false, waived: false });
    case "mark":
      return markPlace(session, place, "attended");
    case "away":
      return markPlace(session, place, "not come");
    case "walk in":
      return walkIn(session, it);
  }
}

type Decided = Result<readonly SessionEvent[]>;

function eventsOf(done: Result<Held>): Decided {
  return done.ok ? good(done.value.events) : done;
}

function told(session: SessionState, decision: Decided): SessionState {
  return decision.ok ? decision.value.reduce<SessionState>(applySession, session) : session;
}

function codes(decision: Result<unknown>): readonly string[] {
  return decision.ok ? [] : decision.problems.map(({ code }) => code);
}
