import * as fc from "fast-check";
import { expect, test } from "vitest";
import { demandAnswer } from "./demand/demand-answer.ts";
import { openingAnswer } from "./opening/opening-answer.ts";
import { outlookAnswer } from "./question/outlook-answer.ts";

/** What has gone wrong in figures shows as NaN or Infinity. */
function strange(value: unknown, path = ""): readonly string[] {
  if (typeof value === "number" && !Number.isFinite(value)) return [`${path} ${value}`];
  if (typeof value === "string" && /NaN|Infinity|undefined/.test(value)) return [`${path} ${value}`];
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, part]) => strange(part, `${path}.${key}`));
}

const answers = [openingAnswer, demandAnswer, outlookAnswer];

test("OUTLOOK-8 OUTLOOK-15 OUTLOOK-67 no input makes a reader throw", () => {
  fc.assert(
    fc.property(fc.anything(), (input) => {
      for (const answer of answers) expect(answer(input).ok).toBe(false);
    }),
  );
});

const share = fc.oneof(
  { weight: 6, arbitrary: fc.integer({ min: 0, max: 100 }).map((hundredths) => hundredths / 100) },
  fc.constantFrom(0.001, 0.999, 1e-9),
);
const people = fc.integer({ min: 0, max: 40 });
const money = fc.integer({ min: 0, max: 9999 }).map((coins) => (coins / 100).toFixed(2));
const maybe = <Value>(value: fc.Arbitrary<Value>) => fc.option(value, { nil: undefined });

test("OUTLOOK-8 every opening is answered in numbers, or told what is wrong", () => {
  const opening = fc.record({
    mats: people,
    ownCap: maybe(people),
    postedCapacity: maybe(fc.integer({ min: 0, max: 60 })),
    turnUp: share,
    pairs: fc.oneof(fc.boolean(), fc.constantFrom(0.01, 0.3, 0.99, 1, 7, 200)),
    risk: fc.constantFrom(0.001, 0.05, 0.5, 0.999),
    paid: fc.boolean(),
    currency: fc.constant("GBP"),
    costs: maybe(fc.record({ turnedAway: money, emptyMat: money })),
    happened: maybe(fc.record({ accepted: people, came: people, returned: people })),
  });
  fc.assert(
    fc.property(opening, (input) => {
      const read = openingAnswer(input);
      if (!read.ok) {
        expect(read.problems.every(({ says, next }) => says.endsWith(".") && next.length > 0)).toBe(true);
        return;
      }
      const { json } = read.value;
      expect(strange(json)).toEqual([]);
      expect(json.accept).toBeGreaterThanOrEqual(Math.min(json.room, json.hardStop ?? json.room));
      if (json.hardStop !== null) expect(json.accept).toBeLessThanOrEqual(json.hardStop);
      if (json.accept > json.room) expect(json.chanceOver).toBeLessThanOrEqual(json.risk + 1e-9);
    }),
    { numRuns: 200 },
  );
});

test("OUTLOOK-14 every list of heads within the places has a mean between its ends", () => {
  const demand = fc.integer({ min: 1, max: 40 }).chain((capacity) =>
    fc.record({
      capacity: fc.constant(capacity),
      heads: fc.array(fc.integer({ min: 0, max: capacity }), { minLength: 1, maxLength: 20 }),
    }),
  );
  fc.assert(
    fc.property(demand, (input) => {
      const read = demandAnswer(input);
      if (!read.ok) throw new Error(JSON.stringify(read.problems));
      const { low, mean, high, turnedAwayPerSession, meanHeads } = read.value.json;
      expect(strange(read.value.json)).toEqual([]);
      expect(low).toBeLessThanOrEqual(mean);
      expect(mean).toBeLessThanOrEqual(high);
      expect(turnedAwayPerSession).toBeGreaterThanOrEqual(0);
      // those who found no place wanted to come too; one session that was full had an even chance of it
      if (input.heads.some((count) => count < input.capacity)) {
        expect(mean).toBeGreaterThanOrEqual(meanHeads - 1e-9);
      }
    }),
    { numRuns: 150 },
  );
});

test("OUTLOOK-66 every sound class is answered in numbers, low ≤ mean ≤ high", () => {
  const outlook = fc.record({
    capacity: fc.integer({ min: 1, max: 40 }),
    currency: fc.constant("GBP"),
    money: fc.record({ yield: money, perHead: money, cost: money }),
    roll: fc.record({
      newcomers: fc.constantFrom(0.01, 0.3, 1, 8, 60),
      stays: fc.constantFrom(0.001, 0.4, 0.999),
      attends: fc.constantFrom(0.001, 0.65, 0.999),
      leaves: fc.constantFrom(0.001, 0.02, 0.5, 0.999),
      alike: fc.constantFrom(null, 2, 4, 1000),
    }),
    regulars: fc.constantFrom(0, 0, 12, 300),
    startedBefore: fc.boolean(),
    sessionsAhead: fc.integer({ min: 1, max: 12 }),
    heads: fc.array(fc.integer({ min: 0, max: 40 }), { maxLength: 9 }),
    notice: fc.record({ days: fc.constantFrom(0, 28, 400), otherUse: money, exitCost: money }),
  });
  fc.assert(
    fc.property(outlook, ({ heads, ...input }) => {
      const happened = heads.map((count, at) => ({
        date: `2026-0${at + 1}-15`,
        heads: Math.min(count, input.capacity),
      }));
      const read = outlookAnswer({ ...input, happened });
      if (!read.ok) throw new Error(JSON.stringify(read.problems));
      const { json } = read.value;
      expect(strange(json)).toEqual([]);
      const { heads: all } = json.together;
      expect(all.low).toBeLessThanOrEqual(all.high);
      expect(all.mean).toBeLessThanOrEqual(input.capacity * input.sessionsAhead * (1 + 1e-9));
      expect(json.learning.effective).toBeGreaterThanOrEqual(1);
      expect(json.sessions.every((it) => it.chanceFull >= 0 && it.chanceFull <= 1)).toBe(true);
    }),
    { numRuns: 25 },
  );
}, 60_000);
