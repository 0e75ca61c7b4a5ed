import * as fc from "fast-check";
import { expect, test } from "vitest";
import { bandOf } from "./band-of.ts";
import {
  betaGeometricLogLikelihood,
  cohortOf,
  expectedPeriods,
  retentionAfter,
  survivalOf,
} from "./beta-geometric.ts";
import { fitBetaGeometric } from "./fit-beta-geometric.ts";
import { kaplanMeier, stepAt, type Watched } from "./kaplan-meier.ts";
import { lowestPoint } from "./lowest-point.ts";
import { betaNet, over } from "./plain-integral.ts";

const watched: fc.Arbitrary<readonly Watched[]> = fc.array(
  fc.record({ time: fc.nat(30), ended: fc.boolean() }),
  { minLength: 1, maxLength: 60 },
);

/** Each unseen end hands its weight on to those watched for longer (B. Efron, 1967): the same curve, another way. */
function handedOn(people: readonly Watched[], time: number): number {
  const ordered = people.toSorted((a, b) => a.time - b.time || Number(b.ended) - Number(a.ended));
  const weights = ordered.map(() => 1 / ordered.length);
  for (const [index, person] of ordered.entries()) {
    const later = ordered.length - index - 1;
    if (person.ended || later === 0) continue;
    for (let other = index + 1; other < ordered.length; other += 1) {
      weights[other] = (weights[other] ?? 0) + (weights[index] ?? 0) / later;
    }
    weights[index] = 0;
  }
  return ordered.reduce((sum, it, at) => (it.ended && it.time <= time ? sum - (weights[at] ?? 0) : sum), 1);
}

test("Kaplan and Meier's curve is the one that hands the weight of the unseen on to those watched for longer", () => {
  fc.assert(
    fc.property(watched, (people) => {
      for (const step of kaplanMeier(people, 1.96)) {
        expect(step.survival).toBeCloseTo(handedOn(people, step.time), 12);
      }
    }),
  );
});

test("the band of the curve holds the curve, lies within 0 and 1, and is wider for more deviates", () => {
  fc.assert(
    fc.property(watched, (people) => {
      const wide = kaplanMeier(people, 1.96);
      for (const [index, narrow] of kaplanMeier(people, 1.2816).entries()) {
        const step = wide[index];
        if (step === undefined) throw new Error("as many steps");
        expect(narrow.low).toBeLessThanOrEqual(narrow.survival);
        expect(narrow.high).toBeGreaterThanOrEqual(narrow.survival);
        expect(step.low).toBeGreaterThanOrEqual(0);
        expect(step.high).toBeLessThanOrEqual(1);
        expect(step.low).toBeLessThanOrEqual(narrow.low);
        expect(step.high).toBeGreaterThanOrEqual(narrow.high);
      }
    }),
  );
});

test("with nobody unseen the curve is the share still there, and the error that of a share", () => {
  // 10 people, 2 end at 1 and 3 at 2: 0.8, then 0.5 with √(0.5 × 0.5 ÷ 10)
  const people = [1, 1, 2, 2, 2, 9, 9, 9, 9, 9].map((time) => ({ time, ended: true }));
  const steps = kaplanMeier(people, 1.96);
  expect(steps.map((it) => it.survival)).toEqual([0.8, 0.5, 0]);
  expect(steps[1]?.standardError).toBeCloseTo(Math.sqrt(0.025), 12);
  expect(stepAt(steps, 1.5)?.survival).toBe(0.8);
  expect(stepAt(steps, 0.5)).toBeUndefined();
});

test("people alike may be given once with their number", () => {
  const one = kaplanMeier(
    [
      { time: 3, ended: true, people: 4 },
      { time: 5, ended: false, people: 6 },
    ],
    1.96,
  );
  const each = kaplanMeier(
    [
      ...Array.from({ length: 4 }, () => ({ time: 3, ended: true })),
      ...Array.from({ length: 6 }, () => ({ time: 5, ended: false })),
    ],
    1.96,
  );
  expect(one).toEqual(each);
  expect(() => kaplanMeier([{ time: -1, ended: true }], 1.96)).toThrow("time: -1");
});

const parameter = fc.double({ min: 0.3, max: 50, noNaN: true });

test("beta-geometric survival is the mean of (1 − p)^t over the people", () => {
  fc.assert(
    fc.property(parameter, parameter, (alpha, beta) => {
      const net = betaNet(alpha, beta);
      const shares = survivalOf({ alpha, beta }, 20);
      for (const periods of [1, 3, 20]) {
        expect(shares[periods]).toBeCloseTo(
          over(net, (p) => (1 - p) ** periods),
          8,
        );
      }
    }),
    { numRuns: 30 },
  );
});

test("who has stayed long stays more surely, and the periods to come are a sum of survival", () => {
  // α 1, β 3: 3/4 stay through the first, 7/8 of those there after 4 stay through the fifth
  expect(retentionAfter({ alpha: 1, beta: 3 }, 0)).toBe(0.75);
  expect(retentionAfter({ alpha: 1, beta: 3 }, 4)).toBe(0.875);
  // after 4 periods: 7/8 + 7/8 × 8/9
  expect(expectedPeriods({ alpha: 1, beta: 3 }, 4, 2)).toBeCloseTo(7 / 8 + 7 / 9, 12);
});

test("no other pair near the fitted one is likelier", () => {
  fc.assert(
    fc.property(
      fc.array(fc.nat(40), { minLength: 2, maxLength: 8 }),
      fc.integer({ min: 1, max: 60 }),
      (ended, still) => {
        fc.pre(ended.some((count) => count > 0));
        const cohorts = [{ ended, still }];
        const { parameters, logLikelihood } = fitBetaGeometric(cohorts);
        for (const [up, over] of [
          [1.02, 1],
          [1, 1.02],
          [0.98, 1],
          [1, 0.98],
          [1.02, 1.02],
          [0.98, 0.98],
        ] as const) {
          const near = { alpha: parameters.alpha * up, beta: parameters.beta * over };
          if (Math.max(near.alpha, near.beta) > 1e5 || Math.min(near.alpha, near.beta) < 1e-4) continue;
          expect(betaGeometricLogLikelihood(near, cohorts)).toBeLessThanOrEqual(logLikelihood + 1e-7);
        }
      },
    ),
    { numRuns: 40 },
  );
});

test("where nobody ended, or everybody at once, the fit is not settled and has no NaN", () => {
  for (const heads of [
    [40, 40, 40, 40],
    [40, 0],
    [1, 1],
  ]) {
    const fit = fitBetaGeometric([cohortOf(heads)]);
    expect(fit.settled).toBe(false);
    expect(survivalOf(fit.parameters, 3).every(Number.isFinite)).toBe(true);
    expect(fit.spread.flat().every(Number.isFinite)).toBe(true);
  }
  expect(() => fitBetaGeometric([])).toThrow("cohorts without a period: 0");
  expect(() => cohortOf([10, 12])).toThrow("heads that grow: 10, 12");
});

function bandFor(scale: number) {
  const fit = fitBetaGeometric([cohortOf([100, 70, 55, 46].map((it) => it * scale))]);
  const { alpha, beta } = fit.parameters;
  return bandOf(
    { ...fit, parameters: [alpha, beta] },
    ([a = 0, b = 0]) => survivalOf({ alpha: a, beta: b }, 10)[10] ?? 0,
    "share",
    1.2816,
  );
}

test("a band comes from how surely the parameters are known: more people, a narrower one", () => {
  const [few, many] = [bandFor(1), bandFor(100)];
  expect(few.low).toBeLessThan(many.low);
  expect(few.high).toBeGreaterThan(many.high);
  // a hundred times the people, a tenth of the width
  expect((few.high - few.low) / (many.high - many.low)).toBeGreaterThan(7);
});

test("the lowest point of a curved valley is found, and a start that is not allowed throws", () => {
  // Rosenbrock's valley, 100 (y − x²)² + (1 − x)², lowest at 1, 1
  const found = lowestPoint(([x = 0, y = 0]) => 100 * (y - x * x) ** 2 + (1 - x) ** 2, [-1.2, 1]);
  expect(found.at[0]).toBeCloseTo(1, 5);
  expect(found.at[1]).toBeCloseTo(1, 5);
  expect(() => lowestPoint(() => Number.NaN, [0])).toThrow("value at the start: Infinity");
});
