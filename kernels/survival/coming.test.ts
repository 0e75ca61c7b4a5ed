import gammaln from "@stdlib/math-base-special-gammaln";
import { comingPeople } from "#testing";
import * as fc from "fast-check";
import { expect, test } from "vitest";
import {
  bgBbLogLikelihood,
  chanceOfTaking,
  chanceThereAt,
  expectedTaken,
  fitBgBb,
  type Taken,
  takenMoments,
} from "./bg-bb.ts";
import {
  type BgNbd,
  chanceOfAnother,
  chanceStillComing,
  expectedRepeats,
  expectedVisits,
  repeatChances,
  type Repeats,
  visitMoments,
} from "./bg-nbd.ts";
import { bgNbdLogLikelihood, fitBgNbd } from "./fit-bg-nbd.ts";
import { betaNet, gammaNet, over } from "./plain-integral.ts";

const parameter = fc.double({ min: 0.3, max: 6, noNaN: true });
const four: fc.Arbitrary<BgNbd> = fc.record({ r: parameter, alpha: parameter, a: parameter, b: parameter });
const seenPeople: fc.Arbitrary<Repeats> = fc
  .tuple(fc.nat(12), fc.nat(20), fc.nat(20))
  .map(([repeats, last, more]) => ({
    repeats,
    last: repeats === 0 ? 0 : last + 1,
    span: (repeats === 0 ? 0 : last + 1) + more,
  }));

/** The likelihood of one person as the model is told: still coming all along, or stopped after the last visit. */
function plainBgNbd({ r, alpha, a, b }: BgNbd, { repeats, last, span }: Repeats, ahead: number) {
  const rates = gammaNet(r, alpha);
  const stops = betaNet(a, b);
  const there =
    over(stops, (p) => (1 - p) ** repeats) * over(rates, (rate) => rate ** repeats * Math.exp(-rate * span));
  const gone =
    repeats === 0
      ? 0
      : over(stops, (p) => p * (1 - p) ** (repeats - 1)) *
        over(rates, (rate) => rate ** repeats * Math.exp(-rate * last));
  // of one with rate λ who stops with p: (1 − e^(−λ p t)) ÷ p
  const visits = over(
    rates,
    (rate) =>
      rate ** repeats *
      Math.exp(-rate * span) *
      over(stops, (p) => ((1 - p) ** repeats * -Math.expm1(-rate * p * ahead)) / p),
  );
  return { likelihood: there + gone, chance: there / (there + gone), visits: visits / (there + gone) };
}

test("BG/NBD: likelihood, chance and visits to expect are what a plain sum over rates and chances gives", () => {
  fc.assert(
    fc.property(four, seenPeople, (parameters, seen) => {
      const plain = plainBgNbd(parameters, seen, 12);
      expect(bgNbdLogLikelihood(parameters, [seen])).toBeCloseTo(Math.log(plain.likelihood), 7);
      expect(chanceStillComing(parameters, seen)).toBeCloseTo(plain.chance, 7);
      expect(expectedVisits(parameters, seen, 12) / plain.visits).toBeCloseTo(1, 6);
    }),
    { numRuns: 12 },
  );
});

test("BG/NBD: the variance of the visits ahead is that of the chances of 0, 1, 2 … of one who still comes, or none", () => {
  fc.assert(
    fc.property(four, seenPeople, (parameters, seen) => {
      const still = chanceStillComing(parameters, seen);
      const since = {
        r: parameters.r + seen.repeats,
        alpha: parameters.alpha + seen.span,
        a: parameters.a,
        b: parameters.b + seen.repeats,
      };
      const chances = repeatChances(since, 6, 3000);
      const square = still * chances.reduce((sum, chance, count) => sum + chance * count ** 2, 0);
      const { mean, variance } = visitMoments(parameters, seen, 6);
      expect(variance / (square - mean ** 2)).toBeCloseTo(1, 5);
    }),
    { numRuns: 40 },
  );
});

test("BG/NBD: the chances of 0, 1, 2 … repeats add to one and their mean is the expected number", () => {
  fc.assert(
    fc.property(four, fc.double({ min: 0.1, max: 20, noNaN: true }), (parameters, time) => {
      const chances = repeatChances(parameters, time, 4000);
      expect(chances.reduce((sum, chance) => sum + chance, 0)).toBeCloseTo(1, 8);
      const mean = chances.reduce((sum, chance, count) => sum + chance * count, 0);
      expect(mean / expectedRepeats(parameters, time)).toBeCloseTo(1, 5);
    }),
    { numRuns: 40 },
  );
});

function at(a: number, b: number): number {
  return expectedRepeats({ r: 0.5, alpha: 3, a, b }, 20);
}

test("BG/NBD: nothing special happens at a = 1 and a + b = 1, where the usual form has poles", () => {
  expect(at(1, 2)).toBeCloseTo((at(1 - 1e-4, 2) + at(1 + 1e-4, 2)) / 2, 7);
  expect(at(0.4, 0.6)).toBeCloseTo((at(0.4, 0.6 - 1e-4) + at(0.4, 0.6 + 1e-4)) / 2, 7);
});

test("BG/NBD: the chance of another visit grows to the chance of still coming", () => {
  const parameters = { r: 1.2, alpha: 2, a: 0.5, b: 4 };
  const seen = { repeats: 6, last: 8, span: 12 };
  const [soon, later, ever] = [1, 10, 1e12].map((time) => chanceOfAnother(parameters, seen, time));
  expect(soon).toBeLessThan(later ?? 0);
  expect(ever).toBeCloseTo(chanceStillComing(parameters, seen), 9);
});

/** The paper's four gammas, by a library's logarithm of the gamma function. */
function byGammas({ r, alpha, a, b }: BgNbd, people: readonly Repeats[]): number {
  return people.reduce((sum, { repeats: x, last, span }) => {
    const first = gammaln(r + x) - gammaln(r) + r * Math.log(alpha);
    const second = gammaln(a + b) + gammaln(b + x) - gammaln(b) - gammaln(a + b + x);
    const still = (alpha + span) ** -(r + x);
    const gone = x === 0 ? 0 : (a / (b + x - 1)) * (alpha + last) ** -(r + x);
    return sum + first + second + Math.log(still + gone);
  }, 0);
}

function simulated(people: number, truth: BgNbd, seed: number): readonly Repeats[] {
  return comingPeople(truth, people, { newFor: 84, until: 272 }, seed).map(({ firstDay, days }) => ({
    repeats: days.length,
    last: days.length === 0 ? 0 : ((days.at(-1) ?? 0) - firstDay) / 7,
    span: (272 - firstDay) / 7,
  }));
}

test("BG/NBD: four parameters drawn for 2,357 people are found again, and no point near is likelier by plain gammas", () => {
  const truth = { r: 0.8, alpha: 3, a: 0.6, b: 3 };
  const people = simulated(2357, truth, 11);
  const fit = fitBgNbd(people);
  expect(fit.settled).toBe(true);
  expect(fit.logLikelihood).toBeCloseTo(byGammas(fit.parameters, people), 6);
  for (const key of ["r", "alpha", "a", "b"] as const) {
    // a sampling error of about a tenth in a and b, half that in r and alpha
    expect(Math.abs(Math.log(fit.parameters[key] / truth[key]))).toBeLessThan(0.4);
    for (const factor of [0.99, 1.01]) {
      const near = { ...fit.parameters, [key]: fit.parameters[key] * factor };
      expect(byGammas(near, people)).toBeLessThan(fit.logLikelihood);
    }
  }
  // twice the difference to the truth is chi-squared with four degrees: above 18.5 once in a thousand
  const gap = 2 * (fit.logLikelihood - byGammas(truth, people));
  expect(gap).toBeGreaterThan(0);
  expect(gap).toBeLessThan(18.5);
});

test.each([
  ["everybody seen once", Array.from({ length: 30 }, () => ({ repeats: 0, last: 0, span: 20 }))],
  ["everybody every week", Array.from({ length: 30 }, () => ({ repeats: 20, last: 20, span: 20 }))],
  ["one person", [{ repeats: 3, last: 5, span: 20 }]],
  [
    "somebody first seen on the last day",
    [
      { repeats: 0, last: 0, span: 0 },
      { repeats: 1, last: 2, span: 9 },
    ],
  ],
  [
    "somebody five hundred times",
    [
      { repeats: 500, last: 99, span: 100 },
      { repeats: 0, last: 0, span: 100 },
    ],
  ],
] as const)("BG/NBD: %s gives numbers, and says that they are not settled", (_, people) => {
  const { parameters, logLikelihood, settled, spread } = fitBgNbd(people);
  expect(settled).toBe(false);
  expect([logLikelihood, ...Object.values(parameters), ...spread.flat()].every(Number.isFinite)).toBe(true);
  for (const seen of people) {
    const visits = expectedVisits(parameters, seen, 12);
    expect(visits).toBeGreaterThanOrEqual(0);
    // 500 in 99 weeks is 61 in twelve
    expect(visits).toBeLessThan(70);
  }
});

test("what cannot have been seen throws", () => {
  const parameters = { r: 1, alpha: 1, a: 1, b: 1 };
  expect(() => chanceStillComing(parameters, { repeats: 1.5, last: 1, span: 2 })).toThrow("repeats: 1.5");
  expect(() => chanceStillComing(parameters, { repeats: 1, last: 3, span: 2 })).toThrow("last, span: 3, 2");
  expect(() => fitBgNbd([{ repeats: 0, last: 0, span: 0 }])).toThrow("time watched: 0");
  expect(() =>
    bgBbLogLikelihood({ alpha: 1, beta: 1, gamma: 1, delta: 1 }, { taken: 3, last: 2, chances: 4 }),
  ).toThrow("taken, last, chances: 3, 2, 4");
});

const takenPeople: fc.Arbitrary<Taken> = fc
  .array(fc.boolean(), { minLength: 1, maxLength: 14 })
  .map((weeks) => ({
    taken: weeks.filter(Boolean).length,
    last: weeks.lastIndexOf(true) + 1,
    chances: weeks.length,
  }));

test("BG/BB: likelihood, chance and visits to expect are what a plain sum over chances gives", () => {
  fc.assert(
    fc.property(four, takenPeople, ({ r: alpha, alpha: beta, a: gamma, b: delta }, seen) => {
      const parameters = { alpha, beta, gamma, delta };
      const takes = betaNet(alpha, beta);
      const stops = betaNet(gamma, delta);
      const { taken, last, chances } = seen;
      const taking = (of: number) => over(takes, (p) => p ** taken * (1 - p) ** (of - taken));
      let likelihood = taking(chances) * over(stops, (q) => (1 - q) ** chances);
      for (let there = last; there < chances; there += 1) {
        likelihood += taking(there) * over(stops, (q) => q * (1 - q) ** there);
      }
      expect(bgBbLogLikelihood(parameters, seen)).toBeCloseTo(Math.log(likelihood), 7);
      const next = taking(chances) * over(stops, (q) => (1 - q) ** (chances + 1));
      expect(chanceThereAt(parameters, seen, 1)).toBeCloseTo(next / likelihood, 7);
      const visits =
        over(takes, (p) => p ** (taken + 1) * (1 - p) ** (chances - taken)) *
        over(stops, (q) => [1, 2, 3].reduce((sum, step) => sum + (1 - q) ** (chances + step), 0));
      expect(expectedTaken(parameters, seen, 3)).toBeCloseTo(visits / likelihood, 7);
      // at the very next chance: there, and taking it
      expect(chanceOfTaking(parameters, seen, 1)).toBeCloseTo(expectedTaken(parameters, seen, 1), 9);
    }),
    { numRuns: 30 },
  );
});

test("BG/BB: the variance of the visits ahead is that of every way to take or leave the next five chances", () => {
  fc.assert(
    fc.property(four, takenPeople, ({ r: alpha, alpha: beta, a: gamma, b: delta }, seen) => {
      const parameters = { alpha, beta, gamma, delta };
      const before = bgBbLogLikelihood(parameters, seen);
      let mean = 0;
      let square = 0;
      for (let way = 0; way < 32; way += 1) {
        const weeks = Array.from({ length: 5 }, (_, bit) => ((way >> bit) & 1) === 1);
        const more = weeks.filter(Boolean).length;
        const last = more === 0 ? seen.last : seen.chances + weeks.lastIndexOf(true) + 1;
        const after = { taken: seen.taken + more, last, chances: seen.chances + 5 };
        const chance = Math.exp(bgBbLogLikelihood(parameters, after) - before);
        mean += chance * more;
        square += chance * more ** 2;
      }
      const moments = takenMoments(parameters, seen, 5);
      expect(moments.mean).toBeCloseTo(mean, 9);
      expect(moments.variance).toBeCloseTo(square - mean ** 2, 9);
    }),
    { numRuns: 40 },
  );
});

test("BG/BB: the chances of every way to take or leave five chances add to one", () => {
  const parameters = { alpha: 1.3, beta: 0.8, gamma: 0.7, delta: 2.9 };
  let sum = 0;
  for (let way = 0; way < 32; way += 1) {
    const weeks = Array.from({ length: 5 }, (_, bit) => ((way >> bit) & 1) === 1);
    const seen = { taken: weeks.filter(Boolean).length, last: weeks.lastIndexOf(true) + 1, chances: 5 };
    sum += Math.exp(bgBbLogLikelihood(parameters, seen));
  }
  expect(sum).toBeCloseTo(1, 12);
});

test("BG/BB: no point near the fitted four is likelier, and zero variance is not settled but finite", () => {
  const people = Array.from({ length: 60 }, (_, index) => {
    const weeks = Array.from(
      { length: 10 },
      (_week, week) => week < 2 + (index % 8) && (index * 7 + week * 3) % 5 < 3,
    );
    return { taken: weeks.filter(Boolean).length, last: weeks.lastIndexOf(true) + 1, chances: 10 };
  });
  const fit = fitBgBb(people);
  const logAt = (parameters: typeof fit.parameters) =>
    people.reduce((sum, seen) => sum + bgBbLogLikelihood(parameters, seen), 0);
  expect(logAt(fit.parameters)).toBeCloseTo(fit.logLikelihood, 8);
  for (const key of ["alpha", "beta", "gamma", "delta"] as const) {
    for (const factor of [0.98, 1.02]) {
      const near = { ...fit.parameters, [key]: fit.parameters[key] * factor };
      if (near[key] > 1e5) continue;
      expect(logAt(near)).toBeLessThanOrEqual(fit.logLikelihood + 1e-7);
    }
  }
  const every = fitBgBb([{ taken: 12, last: 12, chances: 12 }]);
  expect(every.settled).toBe(false);
  expect(expectedTaken(every.parameters, { taken: 12, last: 12, chances: 12 }, 12)).toBeGreaterThan(11);
  expect(() => fitBgBb([{ taken: 0, last: 0, chances: 0 }])).toThrow("chances of anybody: 0");
});
