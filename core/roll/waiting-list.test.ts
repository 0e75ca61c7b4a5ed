import { afterAsking, aSession, asked } from "#testing";
import { expect, test } from "vitest";
import { acceptOffer } from "./answer-offer.ts";
import { applySession } from "./apply-session.ts";
import { offerUntil } from "./offer-until.ts";
import type { SessionEvent } from "./session-event.ts";
import { freeMats, type SessionState } from "./session-state.ts";
import { settleOffers } from "./settle-offers.ts";

const zone = "Europe/London";

test("an offer by day is answered within two hours (ROLL-11)", () => {
  // Tuesday 10:00, class on Wednesday evening: until 12:00
  expect(offerUntil({ now: "2026-12-01T10:00:00Z", starts: "2026-12-02T18:30:00Z", zone })).toBe(
    "2026-12-01T12:00:00Z",
  );
});

test("an offer at half past eight in the evening runs until half past nine next morning (ROLL-11)", () => {
  // 20:30 to 21:00 is half an hour; an hour and a half are left from 8:00 on
  expect(offerUntil({ now: "2026-12-01T20:30:00Z", starts: "2026-12-02T18:30:00Z", zone })).toBe(
    "2026-12-02T09:30:00Z",
  );
});

test("quiet hours are those of the hall, over a change of its clocks (ROLL-11)", () => {
  // Chicago, Saturday 31 October 2026, 22:00 CDT (03:00 UTC on Sunday); the clocks go back at 2:00 on Sunday:
  // 8:00 CST is 14:00 UTC, so the answer is due at 10:00 CST, 16:00 UTC
  const chicago = { now: "2026-11-01T03:00:00Z", starts: "2026-11-02T00:00:00Z", zone: "America/Chicago" };
  expect(offerUntil(chicago)).toBe("2026-11-01T16:00:00Z");
});

test("an offer ends an hour before a morning class, and three hours before it is the first to reply's (ROLL-11)", () => {
  // class at 9:30; asked at 21:30 the evening before, two hours from 8:00 would be 10:00
  const starts = "2026-12-02T09:30:00Z";
  expect(offerUntil({ now: "2026-12-01T21:30:00Z", starts, zone })).toBe("2026-12-02T08:30:00Z");
  expect(offerUntil({ now: "2026-12-02T06:30:00Z", starts, zone })).toBeNull();
});

test("one free mat passes over a pair to the next alone, two go to the pair (ROLL-10)", () => {
  const full = afterAsking(aSession(2), MORNING, ["ana"], ["ben"], ["cleo", "dara"], ["eli"]);
  const one = given(full, "pl-ana");
  expect(settleOffers(one, MORNING)).toMatchObject([{ kind: "offered", entry: "pl-eli" }]);
  const both = given(one, "pl-ben");
  expect(settleOffers(both, MORNING)).toMatchObject([{ entry: "pl-cleo" }, { entry: "pl-dara" }]);
});

test("an offer nobody answered goes on to the next (ROLL-12)", () => {
  const full = afterAsking(aSession(1), MORNING, ["ana"], ["ben"], ["cleo"]);
  const offered = settled(given(full, "pl-ana"), MORNING);
  expect(freeMats(offered)).toBe(0);
  expect(settleOffers(offered, "2026-12-01T11:59:00Z")).toEqual([]);
  expect(settleOffers(offered, "2026-12-01T12:01:00Z")).toMatchObject([
    { kind: "stopped waiting", entry: "pl-ben", why: "no answer" },
    { kind: "offered", entry: "pl-cleo" },
  ]);
});

test("inside three hours all are asked, the first has the mat and the second keeps the turn (ROLL-13)", () => {
  const late = "2026-12-01T16:00:00Z";
  const full = afterAsking(aSession(1), MORNING, ["ana"], ["ben"], ["cleo"]);
  const open = settled(given(full, "pl-ana"), late);
  expect(open.waiting.map(({ offer }) => offer)).toEqual([{ until: null }, { until: null }]);
  const cleo = acceptOffer(open, "pl-cleo", asked("cleo"), late);
  const taken = cleo.ok ? cleo.value.reduce<SessionState>(applySession, open) : open;
  const ben = acceptOffer(taken, "pl-ben", asked("ben"), late);
  expect(!ben.ok && ben.problems.map(({ code }) => code)).toEqual(["place-gone"]);
  expect(taken.waiting.map(({ person }) => person)).toEqual(["ben"]);
});

const MORNING = "2026-12-01T10:00:00Z";

function given(session: SessionState, place: string): SessionState {
  const event: SessionEvent = { kind: "given up", place, late: false, waived: false };
  return applySession(session, event);
}

function settled(session: SessionState, now: string): SessionState {
  return settleOffers(session, now).reduce<SessionState>(applySession, session);
}
