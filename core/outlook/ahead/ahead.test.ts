import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";
import { expect, test } from "vitest";
import { simulateRoll } from "#testing";
import type { RollQuestion } from "../learning/learned-roll.ts";
import type { RollDraw } from "../learning/roll-prior.ts";
import { type LookAhead, lookAhead } from "./look-ahead.ts";
import { totalAtLeast, totalBand } from "./total-band.ts";

const rates: RollDraw = {
  newcomers: 1.2,
  stays: 0.45,
  attends: 0.65,
  leaves: 0.03,
  onRoll: 0,
  echo: 0,
  luck: 0,
};
const alike = 4;
const question: RollQuestion = {
  guess: { ...rates, onRoll: null, echo: null, luck: null },
  alike,
  before: [],
  record: { seen: [], newcomers: [], seasons: [], opening: null },
};

function looked(sessions: number, capacity: number): LookAhead {
  const ahead = Array.from({ length: sessions }, () => ({ season: 1, capacity }));
  return lookAhead(question, [rates], ahead);
}

test("OUTLOOK-40 the first session of a new class is a Poisson count cut off at the places", () => {
  const [first] = looked(1, 2).sessions;
  const none = Math.exp(-1.2);
  // 0, 1 and 2 or more
  expect([...(first?.chances ?? [])]).toEqual([
    expect.closeTo(none, 12),
    expect.closeTo(1.2 * none, 12),
    expect.closeTo(1 - 2.2 * none, 12),
  ]);
  expect(first?.mean).toBeCloseTo(1.2 * none + 2 * (1 - 2.2 * none), 12);
  expect(first?.demand).toBeCloseTo(1.2, 12);
});

test("OUTLOOK-41 a year under nine places agrees with 10,000 simulated ones: every session, and all together", () => {
  const [sessions, capacity, runs] = [44, 9, 10_000];
  const { sessions: ahead, totals } = looked(sessions, capacity);
  const random = xoroshiro128plus(44);
  const seasons = Array.from({ length: sessions }, () => 1);
  const heads = Array.from({ length: runs }, () =>
    simulateRoll({ ...rates, alike, seasons }, random).map(({ demand }) => Math.min(demand, capacity)),
  );
  for (const week of [0, 10, 25, 43]) {
    const mean = heads.reduce((sum, it) => sum + (it[week] ?? 0), 0) / runs;
    // four standard errors of a count that varies by 2.5 or so
    expect(Math.abs(mean - (ahead[week]?.mean ?? 0))).toBeLessThan((4 * 2.5) / Math.sqrt(runs));
  }
  const all = heads.map((it) => it.reduce((sum, count) => sum + count, 0)).sort((a, b) => a - b);
  const mean = all.reduce((sum, count) => sum + count, 0) / runs;
  const deviation = Math.sqrt(all.reduce((sum, count) => sum + (count - mean) ** 2, 0) / runs);
  const [total] = totals;
  expect(Math.abs(mean - (total?.mean ?? 0))).toBeLessThan((4 * deviation) / Math.sqrt(runs));
  // the series for the covariance under places, and the normal curve: within three of a hundred of the spread
  expect(Math.abs(Math.sqrt(total?.variance ?? 0) / deviation - 1)).toBeLessThan(0.03);
  const band = totalBand(totals);
  expect(Math.abs(band.low - (all[runs * 0.1] ?? 0))).toBeLessThan(0.15 * deviation);
  expect(Math.abs(band.high - (all[runs * 0.9] ?? 0))).toBeLessThan(0.15 * deviation);
});

test("OUTLOOK-41 OUTLOOK-26 shared luck widens a year's band by as much as 10,000 simulated years show", () => {
  const [sessions, capacity, runs] = [44, 18, 10_000];
  const lucky = { ...rates, luck: 0.3 };
  const ahead = Array.from({ length: sessions }, () => ({ season: 1, capacity }));
  const { totals, sessions: looked } = lookAhead(question, [lucky], ahead);
  const random = xoroshiro128plus(26);
  const seasons = Array.from({ length: sessions }, () => 1);
  const years = Array.from({ length: runs }, () =>
    simulateRoll({ ...lucky, alike, seasons }, random).map(({ demand }) => Math.min(demand, capacity)),
  );
  const all = years.map((it) => it.reduce((sum, count) => sum + count, 0)).sort((a, b) => a - b);
  const mean = all.reduce((sum, count) => sum + count, 0) / runs;
  const deviation = Math.sqrt(all.reduce((sum, count) => sum + (count - mean) ** 2, 0) / runs);
  const [total] = totals;
  expect(Math.abs(mean - (total?.mean ?? 0))).toBeLessThan(0.05 * deviation);
  expect(Math.abs(Math.sqrt(total?.variance ?? 0) / deviation - 1)).toBeLessThan(0.03);
  // of one evening late in the year between low and high lie eight of ten or more, the ends being whole people
  const late = looked[40];
  const within = years.filter(
    (it) => (it[40] ?? 0) >= (late?.low ?? 0) && (it[40] ?? 0) <= (late?.high ?? 0),
  );
  expect(within.length / runs).toBeGreaterThan(0.8);
  expect(within.length / runs).toBeLessThan(0.92);
  const even = lookAhead(question, [rates], ahead).sessions[40];
  expect((late?.high ?? 0) - (late?.low ?? 0)).toBeGreaterThan((even?.high ?? 0) - (even?.low ?? 0));
});

test("OUTLOOK-41 two draws of the rates are two curves of equal weight", () => {
  const totals = [
    { mean: 10, variance: 1 },
    { mean: 30, variance: 1 },
  ];
  const { mean, low, high } = totalBand(totals);
  expect(mean).toBe(20);
  // a tenth of all lies below the point that a fifth of the first curve lies below: 10 − 0.8416
  expect(low).toBeCloseTo(10 - 0.841621, 5);
  expect(high).toBeCloseTo(30 + 0.841621, 5);
  expect(totalAtLeast(totals, 20)).toBeCloseTo(0.5, 12);
});

function expectedAfter(count: number): number {
  const record = {
    seen: [{ kind: "exact", count } as const],
    newcomers: [null],
    seasons: [1],
    opening: null,
  };
  const { sessions } = lookAhead({ ...question, record }, [rates], [{ season: 1, capacity: 20 }]);
  return sessions[0]?.mean ?? 0;
}

test("OUTLOOK-42 what was seen moves what is expected: eight heads where two were expected", () => {
  // each of the newcomers seen stays and comes with 0.45 × S(1) × 0.65, S(1) = 0.97; seven more seen are 2.0 more
  expect(expectedAfter(8) - expectedAfter(1)).toBeCloseTo(7 * 0.45 * 0.97 * 0.65, 2);
});
