import { readSessions } from "#core/outlook";
import { applySession, cameOver, closeRegister, markPlace, type SessionState } from "#core/roll";
import { afterAsking, aSession } from "#testing";
import { expect, test } from "vitest";
import { registerHeads } from "./register-heads.ts";

test("a closed register gives its heads, who was new, and who still waits", () => {
  const one = held("2026-12-01", 2, ["ana", "ben", "cleo"], ["ana", "ben"]);
  const two = held("2026-12-08", 3, ["ana", "cleo"], ["ana", "cleo"]);
  const heads = registerHeads([two, one], { sessions: [] });
  expect(heads).toEqual([
    { date: "2026-12-01", heads: 2, capacity: 2, newcomers: 2, waiting: 1 },
    { date: "2026-12-08", heads: 2, capacity: 3, newcomers: 1 },
  ]);
  expect(readSessions({ sessions: [...heads] }).ok).toBe(true);
});

test("what she wrote down herself stays, and nobody is called new where the register does not go back far enough", () => {
  const two = held("2026-12-08", 3, ["ana"], ["ana"]);
  const written = { sessions: [{ date: "2026-12-01", heads: 9 }] };
  expect(registerHeads([two], written)).toEqual([{ date: "2026-12-08", heads: 1, capacity: 3 }]);
  expect(registerHeads([held("2026-12-01", 3, ["ana"], ["ana"])], written)).toEqual([]);
});

test("one let in beyond the mats is counted; an open register is not; a cancelled session is told", () => {
  const full = afterAsking(aSession(1), NOW, ["ana"]);
  const marked = told(full, markPlace(full, "pl-ana", "attended"));
  const over = closed(applySession(marked, cameOver("ben", null)));
  expect(registerHeads([over], { sessions: [] })).toEqual([
    { date: "2026-12-01", heads: 2, capacity: 2, newcomers: 2 },
  ]);
  expect(registerHeads([full], { sessions: [] })).toEqual([]);
  const off = applySession(full, { kind: "cancelled", why: "hall shut", movedTo: null });
  expect(registerHeads([off], { sessions: [] })).toEqual([{ date: "2026-12-01", heads: 0, cancelled: true }]);
});

const NOW = "2026-11-25T10:00:00Z";

function held(
  date: string,
  capacity: number,
  asked: readonly string[],
  came: readonly string[],
): SessionState {
  const session = { ...aSession(capacity), date, starts: `${date}T18:30:00Z` };
  const booked = afterAsking(session, NOW, ...asked.map((it) => [it] as const));
  const marked = came.reduce((it, person) => told(it, markPlace(it, `pl-${person}`, "attended")), booked);
  return closed(marked);
}

function closed(session: SessionState): SessionState {
  return closeRegister(session).reduce<SessionState>(applySession, session);
}

function told(session: SessionState, decision: ReturnType<typeof markPlace>): SessionState {
  if (!decision.ok) throw new Error("not decided");
  return decision.value.reduce<SessionState>(applySession, session);
}
