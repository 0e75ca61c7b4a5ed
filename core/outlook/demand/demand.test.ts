import { expect, test } from "vitest";
import type { DatelessSession } from "../happened/held-session.ts";
import { demandSeen } from "../happened/held-session.ts";
import { demandAnswer } from "./demand-answer.ts";
import { demandBehind } from "./demand-behind.ts";
import type { DemandDocumentInput } from "./demand-document.ts";

const session = (heads: number, capacity: number): DatelessSession => ({
  heads,
  capacity,
  turnedAway: null,
  waiting: null,
});

function problemsOf(input: unknown): readonly string[] {
  const found = demandAnswer(input);
  return found.ok ? [] : found.problems.map(({ code, place }) => `${code} at ${place}`);
}

function answered(input: DemandDocumentInput) {
  const found = demandAnswer(input);
  if (!found.ok) throw new Error(JSON.stringify(found.problems));
  return found.value.json;
}

test("OUTLOOK-10 a full session shows its places or more, a list so many more, a count the number itself", () => {
  expect(demandSeen(session(11, 14))).toEqual({ kind: "exact", count: 11 });
  expect(demandSeen(session(14, 14))).toEqual({ kind: "at least", count: 14 });
  expect(demandSeen({ ...session(14, 14), waiting: 3 })).toEqual({ kind: "at least", count: 17 });
  expect(demandSeen({ ...session(14, 14), turnedAway: 2 })).toEqual({ kind: "exact", count: 16 });
  expect(demandSeen({ ...session(14, 14), turnedAway: 0 })).toEqual({ kind: "exact", count: 14 });
  // a place given back too late for anybody who waited
  expect(demandSeen({ ...session(13, 14), waiting: 2 })).toEqual({ kind: "at least", count: 15 });
});

test("OUTLOOK-11 without a full session the mean is the average of the heads, and nobody is known to be sent home", () => {
  const { mean, full, turnedAwayPerSession, low, high } = answered({ capacity: 50, heads: [4, 7, 6, 3] });
  expect(mean).toBeCloseTo(5, 10);
  expect(full).toBe(0);
  expect(turnedAwayPerSession).toBeLessThan(1e-10);
  // a flat likelihood over the mean is Gamma(21, 4): mean 5.25, sd √21 ÷ 4 = 1.15
  expect(low).toBeGreaterThan(5.25 - 1.6 * 1.15);
  expect(high).toBeLessThan(5.25 + 1.6 * 1.15);
});

test("OUTLOOK-12 counted refusals are as good as places", () => {
  // 14 + 4, 10, 14 + 0: 42 ÷ 3
  const { mean, uncounted, atLeast } = answered({
    capacity: 14,
    heads: [14, 10, 14],
    turnedAway: [4, null, 0],
  });
  expect(mean).toBeCloseTo(14, 10);
  expect({ uncounted, atLeast }).toEqual({ uncounted: 0, atLeast: false });
});

test("OUTLOOK-13 when every session was full the answer is at least, with an even chance, and finite", () => {
  // one place, full twice: (1 − e^(−m))² = 1/2 at m = −ln(1 − √0.5) = 1.228, 1/10 at −ln(1 − √0.1) = 0.380
  const { mean, low, high, atLeast, sentences } = answered({ capacity: 1, heads: [1, 1] });
  expect(mean).toBeCloseTo(-Math.log(1 - Math.sqrt(0.5)), 9);
  expect(low).toBeCloseTo(-Math.log(1 - Math.sqrt(0.1)), 9);
  expect(high).toBeLessThan(3);
  expect(atLeast).toBe(true);
  expect(sentences[0]).toMatch(/^At least about 1\.2 people/);
});

test("OUTLOOK-13 five full of six is at least, four of five is not", () => {
  const full = session(9, 9);
  const open = session(6, 9);
  expect(demandBehind([full, full, full, full, full, open]).atLeast).toBe(true);
  expect(demandBehind([full, full, full, full, open]).atLeast).toBe(false);
});

test("OUTLOOK-14 nobody at all, one session, and a thousand places are answered with numbers", () => {
  for (const input of [
    { capacity: 14, heads: [0, 0, 0] },
    { capacity: 14, heads: [14] },
    { capacity: 1, heads: [0] },
    { capacity: 1000, heads: [1000, 1000, 999] },
    { capacity: 1000, heads: [0, 1000] },
  ]) {
    const { low, mean, high, turnedAwayPerSession } = answered(input);
    expect([low, mean, high, turnedAwayPerSession].every(Number.isFinite)).toBe(true);
    expect(low).toBeLessThanOrEqual(mean);
    expect(mean).toBeLessThanOrEqual(high);
  }
  expect(answered({ capacity: 14, heads: [0, 0, 0] }).mean).toBe(0);
});

test("OUTLOOK-15 dated sessions are read in any order, cancelled ones left out", () => {
  const { mean, sessions } = answered({
    capacity: 20,
    sessions: [
      { date: "2026-10-13", heads: 8 },
      { date: "2026-10-06", heads: 5 },
      { date: "2026-10-20", cancelled: true },
    ],
  });
  expect({ mean: Number(mean.toFixed(9)), sessions }).toEqual({ mean: 6.5, sessions: 2 });
});

test("OUTLOOK-15 what cannot be heads is told at its place, all at once", () => {
  expect(problemsOf({ capacity: 14, heads: [15, -1, 2.5] })).toEqual([
    "count-out-of-range at heads[1]",
    "count-not-whole at heads[2]",
  ]);
  expect(problemsOf({ capacity: 14, heads: [15, 3] })).toEqual(["heads-over-capacity at heads[0]"]);
  expect(problemsOf({ capacity: 14, heads: [] })).toEqual(["heads-missing at heads"]);
  expect(problemsOf({ heads: [3] })).toEqual(["capacity-unknown at capacity"]);
  expect(problemsOf({ capacity: 14, heads: [3], waiting: [1, 2] })).toEqual(["lists-differ at waiting"]);
  expect(
    problemsOf({
      sessions: [
        { date: "2026-02-30", heads: 5, capacity: 9 },
        { date: "2026-03-02", heads: 5 },
        { date: "2026-03-09", heads: 12, capacity: 9, newcomers: 13 },
      ],
    }),
  ).toEqual([
    "date-unreadable at sessions[0].date",
    "capacity-unknown at sessions[1].capacity",
    "heads-over-capacity at sessions[2].heads",
    "newcomers-over-heads at sessions[2].newcomers",
  ]);
  const twice = { date: "2026-03-02", heads: 5 };
  expect(problemsOf({ capacity: 9, sessions: [twice, twice] })).toEqual(["session-twice at sessions[1]"]);
});
