// Binomial and beta-binomial sums.
// - 125 accepted for 120 places, each coming with 0.9: answers read in a public worked example
// - 324 sold for 300 places at 0.9, singly and in pairs: the problem is J. Pitman, Probability (1993), p. 109;
//   its answers were computed with a statistics library
// - the beta-binomial moments and chances: computed with a statistics library; its own tests print the kurtosis
// - 22 to 26 accepted for 20 places: computed with a statistics library
import { betaBinomial, binomialAtLeast, binomialAtMost, meanOf, varianceOf } from "#kernels/statistics";
import { expect, test } from "vitest";

test("125 accepted at 0.9: at most 120 come with 0.9961414, at most 119 with 0.9885678", () => {
  expect(binomialAtMost(120, 125, 0.9)).toBeCloseTo(0.9961414, 7);
  expect(binomialAtMost(119, 125, 0.9)).toBeCloseTo(0.9885678, 7);
});

test("324 sold for 300 at 0.9: too many come with 0.04473, and with 0.10493 when they come in pairs", () => {
  expect(binomialAtLeast(301, 324, 0.9)).toBeCloseTo(0.04473, 5);
  expect(binomialAtLeast(151, 162, 0.9)).toBeCloseTo(0.10493, 5);
});

test("beta-binomial (10, 2, 3): mean 4, variance 6, kurtosis −0.690476, and its chances", () => {
  const chances = betaBinomial(10, 2, 3);
  expect(meanOf(chances)).toBeCloseTo(4, 12);
  expect(varianceOf(chances)).toBeCloseTo(6, 12);
  const fourth = chances.reduce((sum, chance, count) => sum + chance * (count - 4) ** 4, 0);
  expect(fourth / 36 - 3).toBeCloseTo(-0.6904761904761907, 10);
  expect(chances[0]).toBeCloseTo(0.06593407, 8);
  expect(chances[5]).toBeCloseTo(0.12587413, 8);
  expect(chances[10]).toBeCloseTo(0.01098901, 8);
});

test("beta-binomial (20, 1, 1): every number from 0 to 20 has the chance 1 ÷ 21", () => {
  const chances = betaBinomial(20, 1, 1);
  expect(chances).toHaveLength(21);
  for (const chance of chances) expect(chance).toBeCloseTo(1 / 21, 13);
});

test.each([
  [22, 0.0041],
  [23, 0.0157],
  [24, 0.0424],
  [25, 0.0905],
  [26, 0.1626],
])("%i accepted at 0.7: more than 20 come with %f", (accepted, chance) => {
  expect(binomialAtLeast(21, accepted, 0.7)).toBeCloseTo(chance, 4);
});

test.each([
  [22, 0.0288],
  [23, 0.0686],
  [24, 0.1254],
  [25, 0.1951],
])("%i accepted, chances Beta(14, 6): more than 20 come with %f", (accepted, chance) => {
  const over = betaBinomial(accepted, 14, 6)
    .slice(21)
    .reduce((sum, it) => sum + it, 0);
  expect(over).toBeCloseTo(chance, 4);
});
