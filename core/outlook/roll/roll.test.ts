import { gammaQuantile } from "#kernels/statistics";
import { survivalOf } from "#kernels/survival";
import * as fc from "fast-check";
import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";
import { expect, test } from "vitest";
import { simulateRoll } from "#testing";
import { type RollPlan, rollMoments, withLuck } from "./roll-moments.ts";
import { plateauLimit, plateauOf, type RollRates, stayingCurve } from "./roll-rates.ts";
import { takeSeen } from "./seen-moments.ts";

const usual: RollRates = { newcomers: 1.2, stays: 0.45, attends: 0.65, leaves: 0.03 };

function plan(sessions: number, given: Partial<RollPlan> = {}): RollPlan {
  return {
    seasons: Array.from({ length: sessions }, () => 1),
    newcomers: Array.from({ length: sessions }, () => null),
    before: [],
    alike: null,
    ...given,
  };
}

test("OUTLOOK-20 two weeks by hand: newcomers of the first come again with stays × still there × attends", () => {
  const rates = { newcomers: 2, stays: 0.5, attends: 0.8, leaves: 0.25 };
  const { mean, covariance } = rollMoments(rates, plan(2));
  // 2; then 2 + 2 × 0.5 × 0.75 × 0.8 = 2.6, and those 0.6 come to both
  expect([...mean]).toEqual([2, expect.closeTo(2.6, 12)]);
  expect([covariance[0], covariance[1], covariance[3]]).toEqual([
    2,
    expect.closeTo(0.6, 12),
    expect.closeTo(2.6, 12),
  ]);
});

test("OUTLOOK-20 the season moves newcomers and how often regulars come, never beyond every session", () => {
  const rates = { newcomers: 2, stays: 1, attends: 0.8, leaves: 0 };
  // 2 × 1.5 = 3 new; then 2 × 0.5 = 1 new and 3 × 0.4; then 2 × 2 = 4 new and 4 regulars, each for sure
  const { mean } = rollMoments(rates, plan(3, { seasons: [1.5, 0.5, 2] }));
  expect([...mean]).toEqual([3, expect.closeTo(2.2, 12), expect.closeTo(8, 12)]);
});

test("OUTLOOK-21 known people are binomial: five regulars who come with 0.6 vary by 5 × 0.6 × 0.4", () => {
  const rates = { newcomers: 0, stays: 0.5, attends: 0.6, leaves: 0.1 };
  const before = [{ people: 5, weeks: 0, known: true }];
  const { mean, covariance } = rollMoments(rates, plan(2, { before }));
  expect([mean[0], covariance[0]]).toEqual([expect.closeTo(3, 12), expect.closeTo(1.2, 12)]);
  // a week later 5 × 0.9 × 0.6 = 2.7; to both come 0.6 × 0.54, alone by chance 0.6 × 0.54: nothing is shared
  expect([mean[1], covariance[1]]).toEqual([expect.closeTo(2.7, 12), expect.closeTo(0, 12)]);
});

test("OUTLOOK-21 a counted cohort is no longer uncertain on its own day, and binomial after", () => {
  const rates = { newcomers: 9, stays: 0.5, attends: 0.8, leaves: 0.25 };
  const { mean, covariance } = rollMoments(rates, plan(2, { newcomers: [4, null] }));
  // nobody but the 4; 9 + 4 × 0.3 later; variance 9 + 4 × 0.3 × 0.7
  expect([mean[0], covariance[0], covariance[1]]).toEqual([0, 0, 0]);
  expect([mean[1], covariance[3]]).toEqual([expect.closeTo(10.2, 12), expect.closeTo(9.84, 12)]);
});

test("OUTLOOK-21 of a counted cohort who comes later has stayed: two weeks after vary together by what both need", () => {
  const rates = { newcomers: 0, stays: 0.5, attends: 0.8, leaves: 0.25 };
  const { covariance } = rollMoments(rates, plan(3, { newcomers: [4, 0, 0] }));
  // each of the 4 comes to the second with 0.5 × 0.75 × 0.8 = 0.3, to the third with 0.5 × 0.75² × 0.8 = 0.225, and to
  // both with 0.5 × 0.75² × 0.8 × 0.8 = 0.18: 4 × (0.18 − 0.3 × 0.225)
  expect(covariance[1 * 3 + 2]).toBeCloseTo(0.45, 12);
});

test("OUTLOOK-26 two weeks by hand with a luck of 0.5: it swells an evening, and whoever is new on a lucky one comes again", () => {
  const rates = { newcomers: 2, stays: 0.5, attends: 0.8, leaves: 0.25 };
  const { mean, covariance, luck } = rollMoments(rates, plan(2, { luck: 0.5 }));
  expect([...mean]).toEqual([2, expect.closeTo(2.6, 12)]);
  // 0.8 × W must stay a chance: its variance is (1 − 0.8) ÷ 0.8 = 0.25 at most, which 0.5² is
  expect(luck[0]).toBeCloseTo(0.25, 12);
  // newcomers 2 + 0.25 × 2² = 3, of whom 0.3 come again: 3 × 0.3 come to both more than by chance
  expect(covariance[1]).toBeCloseTo(0.9, 12);
  // 2 of the second week, and of a mixed 2 thinned by 0.3: 0.6 + 0.25 × 0.6²
  expect(covariance[3]).toBeCloseTo(2.69, 12);
  // its own evening's luck: 2.69 + 0.25 × (2.69 − 2.6 + 2.6²)
  expect(withLuck(covariance[3] ?? 0, 2.6, 0.25)).toBeCloseTo(2.69 + 0.25 * 6.85, 12);
  // ten regulars who come with 0.6: 10 × 0.6 × 0.4 + 0.25 × 10 × 9 × 0.36
  expect(withLuck(2.4, 6, 0.25)).toBeCloseTo(2.4 + 0.25 * 32.4, 12);
});

test("OUTLOOK-26 twenty thousand classes with regulars who followed her and shared luck agree with mean and covariance", () => {
  const runs = 20_000;
  const seasons = [1, 0.8, 1.1, 1, 1, 0.9];
  const rates = { newcomers: 3, stays: 0.5, attends: 0.5, leaves: 0.05 };
  const spread = 0.3;
  // those who were there before are unlike in stopping as a new regular is
  const before = [{ people: 8, weeks: 0, known: true }];
  const { mean, covariance, luck } = rollMoments(rates, plan(6, { seasons, alike: 4, before, luck: spread }));
  const random = xoroshiro128plus(26);
  const demands = Array.from({ length: runs }, () =>
    simulateRoll({ ...rates, alike: 4, seasons, before: 8, luck: spread }, random).map((it) => it.demand),
  );
  for (const [s, t] of [
    [0, 0],
    [3, 3],
    [5, 5],
    [0, 1],
    [2, 4],
    [4, 5],
  ] as const) {
    const product = (it: readonly number[]) =>
      ((it[s] ?? 0) - (mean[s] ?? 0)) * ((it[t] ?? 0) - (mean[t] ?? 0));
    const found = demands.reduce((sum, it) => sum + product(it), 0) / runs;
    const variance = demands.reduce((sum, it) => sum + (product(it) - found) ** 2, 0) / runs;
    const linear = covariance[s * 6 + t] ?? 0;
    const expected = s === t ? withLuck(linear, mean[s] ?? 0, luck[s] ?? 0) : linear;
    expect(Math.abs(found - expected)).toBeLessThan(4 * Math.sqrt(variance / runs));
    const average = demands.reduce((sum, it) => sum + (it[s] ?? 0), 0) / runs;
    expect(Math.abs(average - (mean[s] ?? 0))).toBeLessThan((4 * Math.sqrt(variance)) / Math.sqrt(runs));
  }
});

test("OUTLOOK-21 no mixture of sessions has a variance below nothing, counted cohorts, seasons and luck and all", () => {
  const share = fc.double({ min: 0.001, max: 0.999, noNaN: true });
  fc.assert(
    fc.property(
      fc.record({ newcomers: fc.constant(1), stays: share, attends: share, leaves: share }),
      fc.array(fc.tuple(fc.constantFrom(0.5, 1, 1.4), fc.option(fc.nat(9))), { minLength: 3, maxLength: 12 }),
      fc.array(fc.integer({ min: -3, max: 3 }), { minLength: 12, maxLength: 12 }),
      fc.constantFrom(0, 0.2, 0.8),
      (rates, weeks, weights, spread) => {
        const seasons = weeks.map(([season]) => season);
        const newcomers = weeks.map(([, counted]) => counted);
        const { sessions, mean, covariance, luck } = rollMoments(
          rates,
          plan(weeks.length, { seasons, newcomers, alike: 4, luck: spread }),
        );
        let variance = 0;
        for (let s = 0; s < sessions; s += 1) {
          const own = covariance[s * sessions + s]!;
          variance += weights[s]! ** 2 * (withLuck(own, mean[s]!, luck[s]!) - own);
        }
        for (let s = 0; s < sessions; s += 1)
          for (let t = s; t < sessions; t += 1)
            variance += (s === t ? 1 : 2) * weights[s]! * weights[t]! * covariance[s * sessions + t]!;
        expect(variance).toBeGreaterThan(-1e-9);
      },
    ),
  );
});

test("OUTLOOK-22 regulars who are unlike in stopping stay as the beta-geometric has it", () => {
  // d ~ Beta(4, 196): mean 0.02
  const curve = stayingCurve(0.02, 4, 60);
  for (const [week, share] of survivalOf({ alpha: 4, beta: 196 }, 60).entries()) {
    expect(curve[week]).toBeCloseTo(share, 12);
  }
  expect(stayingCurve(0.02, null, 3)[3]).toBeCloseTo(0.98 ** 3, 14);
});

test("OUTLOOK-23 where a class settles after two years, and the limit beyond: λ(1 + a·r·(1 − d) ÷ d)", () => {
  const rates = { newcomers: 1, stays: 0.4, attends: 0.65, leaves: 0.02 };
  // Σ 0.98^k over 80 weeks is 49 × (1 − 0.98^80) = 49 × 0.80137
  expect(plateauOf(rates, null)).toBeCloseTo(1 + 0.26 * 49 * (1 - 0.98 ** 80), 10);
  expect(plateauOf(rates, null)).toBeCloseTo(rollMoments(rates, plan(81)).mean[80] ?? 0, 10);
  expect(plateauOf(rates, 4)).toBeCloseTo(rollMoments(rates, plan(81, { alike: 4 })).mean[80] ?? 0, 10);
  // without end 1 + 0.65 × 0.4 × 49 = 13.74; unlike by 4 it is 49 × 4 ÷ 3 weeks
  expect(plateauLimit(rates, null)).toBeCloseTo(13.74, 12);
  expect(plateauLimit(rates, 4)).toBeCloseTo(1 + (0.26 * 49 * 4) / 3, 12);
  // the regulars after a session are g ÷ (1 − keep) = 0.4 ÷ 0.02 = 20; of them 0.98 × 0.65 come next, and one is new
  expect(plateauLimit(rates, null)).toBeCloseTo(20 * 0.98 * 0.65 + 1, 12);
  expect(rollMoments(rates, plan(600)).mean[599]).toBeCloseTo(13.74, 3);
  expect(plateauLimit({ ...rates, newcomers: 0 }, 4)).toBe(0);
  expect(plateauLimit({ ...rates, leaves: 0 }, 4)).toBe(Number.POSITIVE_INFINITY);
  expect(plateauOf({ ...rates, leaves: 0 }, 4)).toBeCloseTo(1 + 0.26 * 80, 12);
});

test("OUTLOOK-24 20,000 simulated classes agree with mean and covariance within their error", () => {
  const alike = 4;
  const seasons = Array.from({ length: 16 }, (_, week) => 1 + 0.3 * Math.sin(week));
  const { mean, covariance } = rollMoments(usual, plan(16, { seasons, alike }));
  const random = xoroshiro128plus(20261125);
  const runs = 20_000;
  const demands = Array.from({ length: runs }, () =>
    simulateRoll({ ...usual, alike, seasons }, random).map(({ demand }) => demand),
  );
  const averageOf = (of: (demand: readonly number[]) => number) =>
    demands.reduce((sum, each) => sum + of(each), 0) / runs;
  for (const [s, t] of [
    [0, 0],
    [5, 5],
    [15, 15],
    [0, 4],
    [5, 9],
    [14, 15],
  ] as const) {
    const found = averageOf((it) => it[s] ?? 0);
    const both = averageOf((it) => ((it[s] ?? 0) - (mean[s] ?? 0)) * ((it[t] ?? 0) - (mean[t] ?? 0)));
    const variance = covariance[s * 16 + s] ?? 0;
    // four standard errors: √(V ÷ n) of the mean, √((V·V′ + c²) ÷ n) or so of the covariance, some more for skewness
    expect(Math.abs(found - (mean[s] ?? 0))).toBeLessThan(4 * Math.sqrt(variance / runs));
    const other = covariance[t * 16 + t] ?? 0;
    const error = Math.sqrt((2 * variance * other + variance) / runs);
    expect(Math.abs(both - (covariance[s * 16 + t] ?? 0))).toBeLessThan(4 * error);
  }
});

function binomial(k: number, n: number, p: number): number {
  if (k > n) return 0;
  let chance = 1;
  for (let i = 0; i < k; i += 1) chance *= ((n - i) / (i + 1)) * p;
  return chance * (1 - p) ** (n - k);
}

function poisson(k: number, mean: number): number {
  let chance = Math.exp(-mean);
  for (let i = 1; i <= k; i += 1) chance *= mean / i;
  return chance;
}

/** The luck of an evening at thirty even steps of its distribution. */
function luckSteps(spread: number): readonly number[] {
  if (spread === 0) return [1];
  return Array.from({ length: 30 }, (_, step) => gammaQuantile((step + 0.5) / 30, spread ** -2, 1));
}

/** Slow, plain and exact: the chance of all heads by every number of regulars that there can be, week by week. */
function exactLogChance(rates: RollRates, demands: readonly number[], spread = 0): number {
  const MOST = 40;
  const lucks = luckSteps(spread);
  const evening = (came: number, regulars: number, fresh: number): number =>
    lucks.reduce(
      (sum, luck) =>
        sum +
        binomial(came, regulars, Math.min(1, rates.attends * luck)) * poisson(fresh, rates.newcomers * luck),
      0,
    ) / lucks.length;
  let state: readonly number[] = Array.from({ length: MOST + 1 }, (_, regulars) => (regulars === 0 ? 1 : 0));
  for (const demand of demands) {
    const next: number[] = Array.from({ length: MOST + 1 }, () => 0);
    for (const [regulars, chance] of state.entries()) {
      for (let came = 0; came <= Math.min(demand, regulars); came += 1) {
        const fresh = demand - came;
        const here = chance * evening(came, regulars, fresh);
        if (here < 1e-15) continue;
        for (let joined = 0; joined <= fresh; joined += 1) {
          const joining = here * binomial(joined, fresh, rates.stays);
          const there = regulars + joined;
          for (let kept = 0; kept <= Math.min(MOST, there); kept += 1) {
            next[kept] = (next[kept] ?? 0) + joining * binomial(kept, there, 1 - rates.leaves);
          }
        }
      }
    }
    state = next;
  }
  return Math.log(state.reduce((sum, chance) => sum + chance, 0));
}

test("OUTLOOK-25 the chance of a record by moments is that of every possible roll within a fiftieth a session", () => {
  const record = [1, 3, 2, 4, 3, 5, 4, 3, 6, 5];
  const seen = record.map((count) => ({ kind: "exact", count }) as const);
  for (const rates of [
    usual,
    { ...usual, newcomers: 2, stays: 0.3 },
    { ...usual, attends: 0.85, leaves: 0.1 },
  ]) {
    const byMoments = takeSeen(rollMoments(rates, plan(10)), seen);
    expect(Math.abs(byMoments - exactLogChance(rates, record))).toBeLessThan(0.2);
  }
});

test("OUTLOOK-25 OUTLOOK-26 so it is when every evening has a luck of its own, about 1 by 0.25", () => {
  const record = [1, 3, 2, 4, 2, 5, 4, 2, 6, 4];
  const seen = record.map((count) => ({ kind: "exact", count }) as const);
  const byMoments = takeSeen(rollMoments(usual, plan(10, { luck: 0.25 })), seen);
  expect(Math.abs(byMoments - exactLogChance(usual, record, 0.25))).toBeLessThan(0.2);
});

test("OUTLOOK-25 the first session alone is exact: P(D = 2) and P(D ≥ 2) of a Poisson count", () => {
  const rates = { ...usual, newcomers: 1.5 };
  const two = (Math.exp(-1.5) * 1.5 ** 2) / 2;
  const less = Math.exp(-1.5) * 2.5;
  const exact = takeSeen(rollMoments(rates, plan(1)), [{ kind: "exact", count: 2 }]);
  const full = takeSeen(rollMoments(rates, plan(1)), [{ kind: "at least", count: 2 }]);
  expect(exact).toBeCloseTo(Math.log(two), 10);
  expect(full).toBeCloseTo(Math.log(1 - less), 10);
});
