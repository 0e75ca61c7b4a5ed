// Source: P. Fader and B. Hardie, "How to project customer retention", Journal of Interactive Marketing 21(1),
// 2007: the percentages that survive, "Regular", years 0 to 12, and the two parameters (read in public
// reproductions of the paper's table). The log-likelihood, further digits and the projection were computed with
// an independent library from the paper's formulas. Several groups: B. Hardie and P. Fader, "Fitting the sBG
// model to multi-cohort data", 2010, case 1. One public test suite prints 0.688 for 0.704: a slip.
import { betaGeometricLogLikelihood, cohortOf, fitBetaGeometric, survivalOf } from "#kernels/survival";
import { expect, test } from "vitest";

const regular = [100, 63.1, 46.8, 38.2, 32.6, 28.9, 26.2, 24.1, 22.3, 20.7, 19.4, 18.3, 17.3];
const projected = [100, 62.7, 47.4, 38.8, 33.2, 29.2, 26.2, 23.9, 22.0, 20.4, 19.1, 18.0, 17.0];
const perThousand = regular.map((percent) => Math.round(percent * 10));

test("years 0 to 7 of the regular customers give alpha 0.704 and beta 1.182", () => {
  const fit = fitBetaGeometric([cohortOf(perThousand.slice(0, 8))]);
  expect(fit.settled).toBe(true);
  expect(fit.parameters.alpha).toBeCloseTo(0.70408, 5);
  expect(fit.parameters.beta).toBeCloseTo(1.18204, 5);
  expect(fit.logLikelihood).toBeCloseTo(-1680.265, 3);
});

test("the projection to year 12 is that of the table", () => {
  const { parameters } = fitBetaGeometric([cohortOf(perThousand.slice(0, 8))]);
  const shares = survivalOf(parameters, 12);
  expect(shares.map((share) => Number((share * 100).toFixed(1)))).toEqual(projected);
  // five years not used in the fit, within half a percentage point of what happened
  for (const [year, percent] of regular.entries()) {
    expect(Math.abs((shares[year] ?? 0) * 100 - percent)).toBeLessThan(0.7);
  }
});

test("four groups of different age give 3.80 and 15.19", () => {
  const heads = [10_000, 8000, 6480, 5307, 4391];
  const { parameters } = fitBetaGeometric([5, 4, 3, 2].map((years) => cohortOf(heads.slice(0, years))));
  expect(parameters.alpha.toFixed(2)).toBe("3.80");
  expect(parameters.beta.toFixed(2)).toBe("15.19");
});

/** P(1) = a/(a+b), P(t) = P(t−1)(b+t−2)/(a+b+t−1), as the paper has it, and a search on ever finer grids. */
function plainLogLikelihood(a: number, b: number, heads: readonly number[]): number {
  let ends = a / (a + b);
  let there = 1 - ends;
  let sum = 0;
  for (let year = 1; year < heads.length; year += 1) {
    if (year > 1) {
      ends = (ends * (b + year - 2)) / (a + b + year - 1);
      there -= ends;
    }
    sum += ((heads[year - 1] ?? 0) - (heads[year] ?? 0)) * Math.log(ends);
  }
  return sum + (heads.at(-1) ?? 0) * Math.log(there);
}

test("a plain search on ever finer grids by the paper's recursion finds the same", () => {
  const heads = perThousand.slice(0, 8);
  let best = { a: 1, b: 1, value: Number.NEGATIVE_INFINITY };
  for (let width = 0.9; width > 1e-6; width *= 0.7) {
    const { a, b } = best;
    for (let across = -5; across <= 5; across += 1) {
      for (let up = -5; up <= 5; up += 1) {
        const at = { a: a * (1 + (across * width) / 6), b: b * (1 + (up * width) / 6) };
        const value = plainLogLikelihood(at.a, at.b, heads);
        if (value > best.value) best = { ...at, value };
      }
    }
  }
  const { parameters, logLikelihood } = fitBetaGeometric([cohortOf(heads)]);
  expect(parameters.alpha).toBeCloseTo(best.a, 4);
  expect(parameters.beta).toBeCloseTo(best.b, 4);
  expect(logLikelihood).toBeCloseTo(best.value, 7);
  expect(betaGeometricLogLikelihood({ alpha: best.a, beta: best.b }, [cohortOf(heads)])).toBeCloseTo(
    best.value,
    8,
  );
});
