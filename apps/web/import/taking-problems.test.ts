import { expect, test } from "vitest";
import { takingProblems } from "./taking-problems.ts";

const nothing = { sessions: [] };

test("sessions without places ask for those of an ordinary evening", () => {
  const after = { sessions: [{ date: "2026-09-08", heads: 9 }] };
  expect(takingProblems(nothing, after)).toMatchObject([
    { code: "capacity-unknown", next: "Say how many places an ordinary evening has." },
  ]);
  expect(takingProblems(nothing, { ...after, capacity: 14 })).toEqual([]);
});

test("a session that cannot be right is told by its date", () => {
  const before = { capacity: 14, sessions: [{ date: "2026-09-08", heads: 9, newcomers: 9 }] };
  const after = { capacity: 14, sessions: [{ date: "2026-09-08", heads: 6, newcomers: 9 }] };
  expect(takingProblems(before, after)[0]?.says).toBe(
    "2026-09-08: 9 of 6 people were there for the first time.",
  );
});

test("a record that is unsound already says so instead of blaming the file", () => {
  const before = { capacity: 8, sessions: [{ date: "2026-09-08", heads: 9 }] };
  const after = { ...before, sessions: [...before.sessions, { date: "2026-09-15", heads: 5 }] };
  expect(takingProblems(before, after)).toMatchObject([{ code: "record-unsound" }]);
});
