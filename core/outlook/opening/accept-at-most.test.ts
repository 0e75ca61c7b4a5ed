import * as fc from "fast-check";
import { expect, test } from "vitest";
import { acceptAtMost, chanceOver } from "./accept-at-most.ts";
import type { Together } from "./turn-up.ts";
import { turnUpOf } from "./turn-up.ts";

const alone: Together = { kind: "alone" };
const several: Together = { kind: "alike", correlation: 0.05 };
const free = { hardStop: null, risk: 0.05, paid: false, together: alone };

test("OUTLOOK-1 18 mats, at most 16 wanted, 60 % come: 19 with several pairs, 21 if each decides alone", () => {
  const barn = { ...free, room: 16, hardStop: 59, turnUp: 0.6 };
  expect(acceptAtMost({ ...barn, together: several })).toBe(19);
  expect(acceptAtMost(barn)).toBe(21);
});

test("OUTLOOK-1 one mat and half of them coming: two accepted are too many at 20 %, not at 25 %", () => {
  // P(both come) = 0.25
  expect(acceptAtMost({ ...free, room: 1, turnUp: 0.5, risk: 0.2 })).toBe(1);
  expect(acceptAtMost({ ...free, room: 1, turnUp: 0.5, risk: 0.25 })).toBe(2);
});

test("OUTLOOK-2 the hard stop is kept however few come", () => {
  expect(acceptAtMost({ ...free, room: 16, hardStop: 18, turnUp: 0.1 })).toBe(18);
  expect(acceptAtMost({ ...free, room: 16, hardStop: 12, turnUp: 0.6 })).toBe(12);
  expect(acceptAtMost({ ...free, room: 16, turnUp: 0 })).toBe(2000);
});

test("OUTLOOK-2 paid places are never accepted beyond the room", () => {
  expect(acceptAtMost({ ...free, room: 16, turnUp: 0.6, paid: true })).toBe(16);
});

test("OUTLOOK-3 known pairs come or stay away as one", () => {
  // one pair and one alone, half come: 0 with 1/4, 1 with 1/4, 2 with 1/4, 3 with 1/4
  expect(turnUpOf(3, 0.5, { kind: "pairs", pairs: 1 })).toEqual([0.25, 0.25, 0.25, 0.25]);
  // two people cannot be three pairs
  expect(turnUpOf(2, 0.5, { kind: "pairs", pairs: 3 })).toEqual([0.5, 0, 0.5]);
});

test("OUTLOOK-1 one more than accepted is over the risk, and what is accepted is not", () => {
  const room = fc.integer({ min: 1, max: 30 });
  const share = fc.integer({ min: 5, max: 95 }).map((hundredths) => hundredths / 100);
  fc.assert(
    fc.property(room, share, fc.constantFrom(alone, several), (room, turnUp, together) => {
      const accepted = acceptAtMost({ ...free, room, turnUp, together });
      expect(chanceOver({ room, turnUp, together }, accepted)).toBeLessThanOrEqual(0.05 + 1e-9);
      expect(chanceOver({ room, turnUp, together }, accepted + 1)).toBeGreaterThan(0.05);
    }),
    { numRuns: 60 },
  );
});
