import * as fc from "fast-check";
import { expect, test } from "vitest";
import { cappedCount, expectedMinimum, expectedOver } from "./capped-count.ts";
import { convolve, convolveTimes } from "./convolve.ts";
import { type CountModel, countAtLeast, countPmf } from "./count-model.ts";
import { meanOf, varianceOf } from "./distribution.ts";
import { exactPoisson } from "./exact-reference.ts";

const models: fc.Arbitrary<CountModel> = fc.oneof(
  fc.record({ kind: fc.constant("steady" as const), mean: fc.double({ min: 0, max: 60, noNaN: true }) }),
  fc.record({ kind: fc.constant("poisson" as const), mean: fc.double({ min: 0, max: 60, noNaN: true }) }),
  fc.record({
    kind: fc.constant("varied" as const),
    mean: fc.double({ min: 0, max: 60, noNaN: true }),
    dispersion: fc.double({ min: 1, max: 6, noNaN: true }),
  }),
);

test("a hall never holds more than its capacity and its chances add to one", () => {
  fc.assert(
    fc.property(models, fc.nat(40), (model, capacity) => {
      const chances = cappedCount(model, capacity);
      expect(chances).toHaveLength(capacity + 1);
      expect(chances.reduce((sum, chance) => sum + chance, 0)).toBeCloseTo(1, 11);
      expect(Math.min(...chances)).toBeGreaterThanOrEqual(0);
    }),
  );
});

test("E[min(D, K)] is the sum of P(D > j) for j below K, and those who came and were turned away make the mean", () => {
  fc.assert(
    fc.property(models, fc.nat(40), (model, capacity) => {
      const byTails = Array.from({ length: capacity }, (_, j) => countAtLeast(model, j + 1));
      const sum = byTails.reduce((total, chance) => total + chance, 0);
      expect(expectedMinimum(model, capacity)).toBeCloseTo(sum, 9);
      expect(expectedMinimum(model, capacity) + expectedOver(model, capacity)).toBeCloseTo(model.mean, 9);
    }),
  );
});

test("Poisson 9.5 in a hall of 10 brings 8.675 people, exactly summed", () => {
  // 10 − Σ (10 − k) P(k), k below 10, from two hundred digits of each chance
  let missing = 0;
  for (let k = 0; k < 10; k += 1) missing += (10 - k) * exactPoisson(k, 95);
  expect(expectedMinimum({ kind: "poisson", mean: 9.5 }, 10)).toBeCloseTo(10 - missing, 12);
});

test("capacity nought is an empty hall, and one that is not whole throws", () => {
  expect(cappedCount({ kind: "poisson", mean: 3 }, 0)).toEqual([1]);
  expect(() => cappedCount({ kind: "poisson", mean: 3 }, 2.5)).toThrow("capacity: 2.5");
});

test("steady 9.25 is nine people three times of four", () => {
  const steady: CountModel = { kind: "steady", mean: 9.25 };
  expect(countPmf(steady, 9)).toBe(0.75);
  expect(countPmf(steady, 10)).toBe(0.25);
  expect(cappedCount(steady, 9)).toEqual([0, 0, 0, 0, 0, 0, 0, 0, 0, 1]);
});

test("a far tail is not lost beside one: P(D ≥ 40) at mean 8 is 3.9e-15", () => {
  let exact = 0;
  for (let k = 40; k < 90; k += 1) exact += exactPoisson(k, 80);
  expect(countAtLeast({ kind: "poisson", mean: 8 }, 40) / exact).toBeCloseTo(1, 10);
});

test("two coins and one coin are three coins", () => {
  expect(convolve([0.25, 0.5, 0.25], [0.5, 0.5])).toEqual([0.125, 0.375, 0.375, 0.125]);
  expect(convolveTimes([0.5, 0.5], 3)).toEqual([0.125, 0.375, 0.375, 0.125]);
  expect(convolveTimes([0.5, 0.5], 0)).toEqual([1]);
});

test("means and variances of a term are those of an evening times the evenings", () => {
  const evening = cappedCount({ kind: "varied", mean: 9, dispersion: 1.4 }, 14);
  const term = convolveTimes(evening, 12);
  expect(meanOf(term)).toBeCloseTo(12 * meanOf(evening), 9);
  expect(varianceOf(term)).toBeCloseTo(12 * varianceOf(evening), 8);
});
