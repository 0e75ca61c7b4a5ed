import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";
import { expect, test } from "vitest";
import { betaQuantile } from "./beta-quantile.ts";
import { cholesky, lowerSolve, lowerTimes } from "./cholesky.ts";
import { gammaQuantile } from "./gamma-quantile.ts";
import { importanceDraws } from "./importance-draws.ts";
import { latinDraws } from "./latin-draws.ts";
import { logBeta, logGamma } from "./log-gamma.ts";
import { matchedCount, matchSeen } from "./matched-count.ts";
import { normalAtMost, normalDensity, normalQuantile } from "./normal.ts";
import { resampled, weighted, weightedMean, weightedQuantile } from "./weighted-draws.ts";

const sum = (values: Iterable<number>) => [...values].reduce((total, value) => total + value, 0);

test("a matched count is Poisson, binomial or negative binomial where its variance says so", () => {
  // Poisson(2): e^(−2), 2e^(−2), 2e^(−2), the rest
  const none = Math.exp(-2);
  expect([...matchedCount(2, 2, 3)]).toEqual(
    [none, 2 * none, 2 * none, 1 - 5 * none].map((it) => expect.closeTo(it, 12)),
  );
  // Binomial(4, 0.5): mean 2, variance 1
  expect([...matchedCount(2, 1, 5)]).toEqual([1, 4, 6, 4, 1, 0].map((ways) => expect.closeTo(ways / 16, 12)));
  // negative binomial with r = 2, p = 1/2: mean 2, variance 4, P(k) = (k + 1) ÷ 2^(k + 2)
  expect([...matchedCount(2, 4, 3)].slice(0, 3)).toEqual(
    [1 / 4, 2 / 8, 3 / 16].map((it) => expect.closeTo(it, 12)),
  );
});

test("a matched count has the moments it was asked for, small and large, and chances that add to one", () => {
  for (const [mean, variance] of [
    [0.3, 0.3],
    [5, 3],
    [12, 30],
    [400, 500],
  ] as const) {
    const chances = matchedCount(mean, variance, 2000);
    const found = sum([...chances].map((chance, count) => chance * count));
    const second = sum([...chances].map((chance, count) => chance * (count - mean) ** 2));
    expect(sum(chances)).toBeCloseTo(1, 9);
    expect(Math.abs(found - mean)).toBeLessThan(0.02 * mean);
    expect(Math.abs(second - variance)).toBeLessThan(0.03 * variance);
  }
  for (const odd of [matchedCount(0, 0, 4), matchedCount(1e-12, 5, 4), matchedCount(9, 0, 4)]) {
    expect([...odd].every((chance) => chance >= 0 && chance <= 1)).toBe(true);
    expect(sum(odd)).toBeCloseTo(1, 9);
  }
});

test("one or more of a Poisson(1) count is 1 ÷ (1 − e^(−1)) on average", () => {
  const { logChance, mean, variance } = matchSeen({ kind: "at least", count: 1 }, 1, 1);
  const some = 1 - Math.exp(-1);
  expect(logChance).toBeCloseTo(Math.log(some), 12);
  expect(mean).toBeCloseTo(1 / some, 12);
  // E[D²] = 2 over the same chance
  expect(variance).toBeCloseTo(2 / some - 1 / some ** 2, 12);
  // what cannot be believed is still a number
  expect(matchSeen({ kind: "at least", count: 60 }, 0.1, 0.1).logChance).toBeGreaterThan(-800);
});

test("one point of the unit cube lies in each stratum of each side", () => {
  const points = latinDraws(10, 2, xoroshiro128plus(1));
  for (const side of [0, 1]) {
    const strata = points.map((point) => Math.floor((point[side] ?? 0) * 10));
    expect(strata.toSorted((a, b) => a - b)).toEqual([0, 1, 2, 3, 4, 5, 6, 7, 8, 9]);
  }
});

test("a triangle times its transpose is the matrix: [[4, 2], [2, 5]] is [[2, 0], [1, 2]] squared so", () => {
  const lower = cholesky([
    [4, 2],
    [2, 5],
  ]);
  expect(lower).toEqual([
    [2, 0],
    [1, 2],
  ]);
  expect(lowerTimes(lower ?? [], [3, 4])).toEqual([6, 11]);
  expect(lowerSolve(lower ?? [], [6, 11])).toEqual([3, 4]);
  expect(
    cholesky([
      [1, 2],
      [2, 1],
    ]),
  ).toBeNull();
});

test("weights of 3 to 1 are worth 1.6 draws, and even steps take each as often as it weighs", () => {
  const draws = weighted([[0], [8]], [Math.log(3), Math.log(1)]);
  expect(draws.weights).toEqual([expect.closeTo(0.75, 12), expect.closeTo(0.25, 12)]);
  // 1 ÷ (9/16 + 1/16)
  expect(draws.effective).toBeCloseTo(1.6, 12);
  expect(weightedMean(draws)).toEqual([expect.closeTo(2, 12)]);
  expect(resampled(draws, 8, xoroshiro128plus(2)).filter(([it]) => it === 0)).toHaveLength(6);
  expect(weightedQuantile([5, 1, 3], [0.2, 0.5, 0.3], 0.5)).toBe(1);
  expect(weightedQuantile([5, 1, 3], [0.2, 0.5, 0.3], 0.51)).toBe(3);
  expect(() => weighted([[0]], [Number.NEGATIVE_INFINITY])).toThrow("no draw has any chance");
});

test("importance draws find a normal posterior: prior Normal(0, 1), seen 3 with variance 1/9", () => {
  // posterior precision 1 + 9, mean 27 ÷ 10, variance 1 ÷ 10
  const found = importanceDraws(
    {
      dimensions: 1,
      priorDraw: ([share = 0.5]) => [normalQuantile(share)],
      logPrior: ([x = 0]) => Math.log(normalDensity(x)),
      logLikelihood: ([x = 0]) => -4.5 * (x - 3) ** 2,
    },
    { each: 300, wanted: 400, rounds: 6 },
    xoroshiro128plus(5),
  );
  const [mean = 0] = weightedMean(found);
  const spread = sum(found.draws.map(([x = 0], at) => (found.weights[at] ?? 0) * (x - mean) ** 2));
  // a few standard errors of 400 draws: 0.32 ÷ 20
  expect(Math.abs(mean - 2.7)).toBeLessThan(0.05);
  expect(Math.abs(spread - 0.1)).toBeLessThan(0.02);
  expect(found.effective).toBeGreaterThan(400);
  expect(found.rounds).toBeGreaterThan(1);
});

test("quantiles and logarithms of the library are told by name: medians and factorials", () => {
  expect(betaQuantile(0.5, 3, 3)).toBeCloseTo(0.5, 12);
  // Beta(1, 2) lies below x with 1 − (1 − x)²
  expect(betaQuantile(0.75, 1, 2)).toBeCloseTo(0.5, 10);
  // an exponential of mean 2: −2 ln(1 − 0.5)
  expect(gammaQuantile(0.5, 1, 2)).toBeCloseTo(2 * Math.LN2, 10);
  expect(normalAtMost(0)).toBe(0.5);
  expect(normalAtMost(normalQuantile(0.9))).toBeCloseTo(0.9, 12);
  expect(logGamma(5)).toBeCloseTo(Math.log(24), 12);
  // B(2, 3) = 1 ÷ 12
  expect(logBeta(2, 3)).toBeCloseTo(-Math.log(12), 12);
  expect(() => betaQuantile(2, 1, 1)).toThrow("beta: 2");
  expect(() => gammaQuantile(0.5, 0, 1)).toThrow("gamma: 0.5, 0, 1");
});
