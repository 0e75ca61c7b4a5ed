// Prices, passes and uncertain heads against independent general-purpose libraries, which share no code with ours:
// - simple-statistics 7.12.1: binomial and Poisson tables, least squares, the median (computed)
// - currency.js 2.0.4: amounts shared out in whole coins (computed)
// Its tables end where they add to 0.9999; what is compared lies well inside.
import { courseTerms, fitCurves, monthlySpread, passUseBy, surveySummary, uncertainHeads } from "#core/price";
import { minor } from "#core/words";
import Currency from "currency.js";
import { Fraction } from "fraction.js";
import { binomialDistribution, linearRegression, median, poissonDistribution } from "simple-statistics";
import { expect, test } from "vitest";

function sumTo(chances: readonly number[], count: number): number {
  return chances.slice(0, count).reduce((sum, it) => sum + it, 0);
}

test.each([
  [5, 0.75],
  [6, 0.6],
  [10, 0.55],
  [12, 0.7],
  [20, 0.6],
])("a pass of %i at %f runs as many weeks as the library's binomial table says", (classes, attendance) => {
  const chancesOf = (weeks: number): readonly number[] => binomialDistribution(weeks, attendance) ?? [];
  let weeks = classes;
  while (sumTo(chancesOf(weeks), classes) > 0.15) weeks += 1;
  const found = passUseBy({ classes, attendance });
  if (!found.ok) throw new Error("a sound pass was refused");
  expect(found.value.teachingWeeks).toBe(weeks);
  expect(found.value.shareLosingClasses).toBeCloseTo(sumTo(chancesOf(weeks), classes), 9);
});

test.each([
  [9, 14, 4],
  [11, 16, 5],
  [6, 8, 3],
])(
  "with %f people on average and %i places the chance of fewer than %i, and of a full hall, are the library's",
  (mean, capacity, pays) => {
    // each leaves 1.00 and the evening costs a coin under what `pays` people leave
    const heads = uncertainHeads({
      demand: { kind: "poisson", mean },
      capacity,
      margin: new Fraction(100),
      cost: new Fraction(pays * 100 - 1),
      sessions: 1,
    });
    const table = poissonDistribution(mean) ?? [];
    expect(heads.chanceOfLoss).toBeCloseTo(sumTo(table, pays), 9);
    expect(heads.chanceFull).toBeCloseTo(1 - sumTo(table, capacity), 9);
    // E[min(D, K)] = K − Σ (K − n) P(n), n below K
    const short = table.slice(0, capacity).reduce((sum, chance, n) => sum + (capacity - n) * chance, 0);
    expect(heads.expectedHeads).toBeCloseTo(capacity - short, 9);
  },
);

const beliefs = [
  { price: 800, heads: 16 },
  { price: 950, heads: 12.5 },
  { price: 1200, heads: 9 },
  { price: 1400, heads: 8 },
];

test("both curves are the library's least squares, plain and in logarithms", () => {
  const fitted = fitCurves(beliefs, "beliefs");
  if (!fitted.ok) throw new Error("sound beliefs were refused");
  const plain = linearRegression(beliefs.map(({ price, heads }) => [price, heads]));
  const logarithms = linearRegression(beliefs.map(({ price, heads }) => [Math.log(price), Math.log(heads)]));
  for (const curve of fitted.value) {
    const [slope, level] = curve.kind === "linear" ? [plain.m, plain.b] : [logarithms.m, logarithms.b];
    expect(curve.kind === "linear" ? curve.slope : curve.elasticity).toBeCloseTo(slope, 9);
    expect(curve.level).toBeCloseTo(level, 6);
  }
});

test("the middle price of a survey is the library's median", () => {
  for (const prices of [[900], [900, 1100], [750, 1100, 900], [750, 1100, 900, 1300]]) {
    const summary = surveySummary(prices.map((price) => ({ where: "", price: minor(price), heads: null })));
    expect(summary?.median).toBe(median(prices));
  }
});

test.each([
  [5000, 6],
  [5100, 6],
  [9999, 7],
  [1, 3],
])(
  "the parts of a course of %i coins in %i sessions are the library's, in another order",
  (price, sessions) => {
    const parts = new Currency(price, { fromCents: true })
      .distribute(sessions)
      .map(({ intValue }) => intValue);
    const { refunds } = courseTerms({ sessions, price: minor(price) });
    expect(refunds.toSorted((a, b) => a - b)).toEqual(parts.toSorted((a, b) => a - b));
  },
);

test.each([
  [850, 40],
  [733, 38],
])(
  "a year of sessions at %i coins, %i of them, is shared out as the library shares it",
  (perSession, sessions) => {
    const year = new Currency(perSession, { fromCents: true }).multiply(sessions);
    const parts = year.distribute(12).map(({ intValue }) => intValue);
    const spread = monthlySpread(minor(perSession), sessions);
    expect(spread.year).toBe(year.intValue);
    expect(spread.payments.toSorted((a, b) => a - b)).toEqual(parts.toSorted((a, b) => a - b));
  },
);
