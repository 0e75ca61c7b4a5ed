import { assert, integer, property } from "fast-check";
import { Fraction } from "fraction.js";
import { expect, test } from "vitest";
import { type UncertainEvening, uncertainHeads } from "./uncertain-heads.ts";

const evening: UncertainEvening = {
  demand: { kind: "steady", mean: 2.5 },
  capacity: 4,
  margin: new Fraction(800),
  cost: new Fraction(2000),
  sessions: 2,
};

test("PRICE-40 two or three people with even chances: one evening of two loses, the term breaks even or more", () => {
  // 2 × 8 − 20 = −4, 3 × 8 − 20 = +4; two evenings: −8 a quarter, 0 half, +8 a quarter
  const found = uncertainHeads(evening);
  expect(found.chances.map(({ chance }) => chance)).toEqual([0, 0, 0.5, 0.5, 0]);
  expect(found.chances.map(({ contribution }) => contribution.valueOf())).toEqual([
    -2000, -1200, -400, 400, 1200,
  ]);
  expect(found.chanceOfLoss).toBe(0.5);
  expect(found.expectedContribution).toBe(0);
  expect(found.term).toEqual({ sessions: 2, expectedContribution: 0, chanceOfLoss: 0.25, nineOfTen: -800 });
});

test("PRICE-41 a full hall makes the mean pushed through the formula too rosy", () => {
  // steady 12.5 in 12 places is always 12; Poisson 12 in 12 places is less than 12
  const rosy = uncertainHeads({ ...evening, demand: { kind: "poisson", mean: 12 }, capacity: 12 });
  expect(rosy.contributionAtMean).toBe(12 * 800 - 2000);
  expect(rosy.expectedHeads).toBeLessThan(10.7);
  expect(rosy.expectedContribution).toBeCloseTo(rosy.expectedHeads * 800 - 2000, 9);
  expect(rosy.expectedContribution).toBeLessThan(rosy.contributionAtCappedMean);
});

test("PRICE-41 whatever the numbers the mean through the formula is never too low", () => {
  assert(
    property(
      integer({ min: 0, max: 400 }),
      integer({ min: 0, max: 30 }),
      integer({ min: 0, max: 30 }),
      (tenths, capacity, more) => {
        const demand = { kind: "varied" as const, mean: tenths / 10, dispersion: 1 + more / 10 };
        const found = uncertainHeads({ ...evening, demand, capacity });
        // min(D, K) bends downwards, so its mean lies under the bend
        expect(found.expectedContribution).toBeLessThanOrEqual(found.contributionAtCappedMean + 1e-6);
        expect(found.chances.reduce((sum, { chance }) => sum + chance, 0)).toBeCloseTo(1, 10);
        expect(found.worstQuarter).toBeLessThanOrEqual(found.expectedContribution + 1e-6);
      },
    ),
  );
});

test("PRICE-40 Poisson 6 against a break-even of 5: the evening loses with the chance of 4 or fewer", () => {
  // 5 × 8.00 = 40.00; e^−6 (1 + 6 + 18 + 36 + 54) = 115 e^−6
  const found = uncertainHeads({
    ...evening,
    demand: { kind: "poisson", mean: 6 },
    capacity: 20,
    cost: new Fraction(4000),
  });
  expect(found.chanceOfLoss).toBeCloseTo(115 * Math.exp(-6), 12);
});

test("PRICE-40 an amount exactly at the cost is no loss", () => {
  // 2.5 people at 8.00 pay 20.00 exactly; thirds of a penny do not tip it
  const third = uncertainHeads({
    ...evening,
    demand: { kind: "steady", mean: 3 },
    margin: new Fraction(2000, 3),
    cost: new Fraction(2000),
  });
  expect(third.chanceOfLoss).toBe(0);
});

test("PRICE-42 the worst quarter of the evenings is their own mean", () => {
  // half −4, half +4: the worst quarter is −4
  expect(uncertainHeads(evening).worstQuarter).toBe(-400);
  expect(uncertainHeads(evening).usualHeads).toEqual([2, 3]);
});

test("PRICE-40 when a head leaves nothing every evening with a cost loses, and a full one the most", () => {
  const found = uncertainHeads({ ...evening, margin: new Fraction(-100) });
  expect(found.chanceOfLoss).toBe(1);
  expect(found.worstQuarter).toBe(-2300);
  expect(uncertainHeads({ ...evening, margin: new Fraction(0), cost: new Fraction(0) }).chanceOfLoss).toBe(0);
});

test("PRICE-42 a term of forty evenings at thirty places is worked out whole", () => {
  const found = uncertainHeads({
    ...evening,
    demand: { kind: "varied", mean: 18, dispersion: 1.5 },
    capacity: 30,
    sessions: 40,
  });
  expect(found.term.expectedContribution).toBeCloseTo(40 * found.expectedContribution, 5);
  expect(found.term.chanceOfLoss).toBeLessThan(found.chanceOfLoss);
});
