import betaln from "@stdlib/math-base-special-betaln";
import gammaln from "@stdlib/math-base-special-gammaln";
import negativeBinomialOfLibrary from "@stdlib/stats-base-dists-negative-binomial-pmf";
import * as fc from "fast-check";
import { Fraction } from "fraction.js";
import { describe, expect, test } from "vitest";
import { betaBinomial } from "./beta-binomial.ts";
import { binomialAtLeast, binomialAtMost, binomialPmf } from "./binomial.ts";
import { meanOf, meanOfLowest, quantileOf, varianceOf } from "./distribution.ts";
import { exactBinomialAtLeast } from "./exact-binomial.ts";
import {
  exactBetaBinomial,
  exactBinomial,
  exactBinomialAtMost,
  exactNegativeBinomial,
  exactPoisson,
} from "./exact-reference.ts";
import { negativeBinomialPmf } from "./negative-binomial.ts";
import { poissonPmf } from "./poisson.ts";

/** How far a double is from the truth, as a share of it. */
function off(found: number, truth: number): number {
  return truth === 0 ? Math.abs(found) : Math.abs(found / truth - 1);
}

describe("binomial", () => {
  test("every chance of 40 trials at 0.65 is within 1e-13 of exact whole-number arithmetic", () => {
    for (let k = 0; k <= 40; k += 1) {
      expect(off(binomialPmf(k, 40, 0.65), exactBinomial(k, 40, 65, 100))).toBeLessThan(1e-13);
    }
  });

  test("sums from either side are within 1e-12 of exact, also far out in the tail", () => {
    for (const [k, n] of [
      [119, 125],
      [120, 125],
      [60, 125],
      [10, 125],
    ] as const) {
      const exact = exactBinomialAtMost(k, n, 9, 10);
      expect(off(binomialAtMost(k, n, 0.9), exact)).toBeLessThan(1e-12);
      expect(Math.abs(binomialAtLeast(k + 1, n, 0.9) - (1 - exact))).toBeLessThan(1e-13);
    }
  });

  test("a chance of nought or one leaves no doubt, and impossible counts have none", () => {
    expect(binomialPmf(0, 8, 0)).toBe(1);
    expect(binomialPmf(8, 8, 1)).toBe(1);
    expect(binomialPmf(9, 8, 0.5)).toBe(0);
    expect(binomialAtLeast(0, 8, 0.5)).toBe(1);
    expect(binomialAtLeast(9, 8, 0.5)).toBe(0);
    expect(binomialAtMost(8, 8, 0.5)).toBe(1);
    expect(binomialAtMost(-1, 8, 0.5)).toBe(0);
  });

  test("trials that are not whole and chances beyond one throw", () => {
    expect(() => binomialPmf(1, 2.5, 0.5)).toThrow("trials: 2.5");
    expect(() => binomialPmf(1, 2, 1.5)).toThrow("chance: 1.5");
  });

  test("the exact tail has no rounding: at least 1 of 2 at a half is 3/4, at least 2 of 3 at 2/5 is 44/125", () => {
    // 3 · 0.16 · 0.6 + 0.064 = 0.352
    expect(exactBinomialAtLeast(1, 2, new Fraction(1, 2)).toFraction()).toBe("3/4");
    expect(exactBinomialAtLeast(2, 3, new Fraction(2, 5)).toFraction()).toBe("44/125");
    expect(exactBinomialAtLeast(4, 3, new Fraction(2, 5)).valueOf()).toBe(0);
  });

  test("doubles and exact fractions agree on every tail within 1e-12", () => {
    fc.assert(
      fc.property(fc.nat(60), fc.nat(60), fc.integer({ min: 0, max: 100 }), (k, n, hundredths) => {
        const exact = exactBinomialAtLeast(k, n, new Fraction(hundredths, 100)).valueOf();
        expect(Math.abs(binomialAtLeast(k, n, hundredths / 100) - exact)).toBeLessThan(1e-12);
      }),
    );
  });
});

test("Poisson chances are within 1e-13 of two hundred digits of whole-number arithmetic", () => {
  for (const tenths of [3, 95, 161]) {
    for (let k = 0; k <= 40; k += 1) {
      expect(off(poissonPmf(k, tenths / 10), exactPoisson(k, tenths))).toBeLessThan(1e-13);
    }
  }
});

test("a mean of nought has nobody, and a mean below it throws", () => {
  expect(poissonPmf(0, 0)).toBe(1);
  expect(poissonPmf(1, 0)).toBe(0);
  expect(() => poissonPmf(1, -1)).toThrow("mean: -1");
});

describe("negative binomial", () => {
  test("mean 8 and dispersion 2 is r = 8, p = 1/2: within 1e-13 of whole-number arithmetic", () => {
    for (let k = 0; k <= 40; k += 1) {
      expect(off(negativeBinomialPmf(k, 8, 2), exactNegativeBinomial(k, 8, 1, 2))).toBeLessThan(1e-13);
    }
  });

  test("a library of its own agrees within 1e-12 where r is no whole number", () => {
    // mean 9.5, dispersion 1.5: r = 9.5 ÷ 0.5 = 19; mean 9.5, dispersion 2.2: r = 7.9166…, p = 1 ÷ 2.2
    for (const dispersion of [1.5, 2.2, 4]) {
      for (let k = 0; k <= 40; k += 1) {
        const theirs = negativeBinomialOfLibrary(k, 9.5 / (dispersion - 1), 1 / dispersion);
        expect(off(negativeBinomialPmf(k, 9.5, dispersion), theirs)).toBeLessThan(1e-12);
      }
    }
  });

  test("dispersion 1 is Poisson, and a hair above it nearly so", () => {
    for (let k = 0; k <= 30; k += 1) {
      expect(off(negativeBinomialPmf(k, 9.5, 1), poissonPmf(k, 9.5))).toBeLessThan(1e-13);
      expect(off(negativeBinomialPmf(k, 9.5, 1 + 1e-10), poissonPmf(k, 9.5))).toBeLessThan(1e-8);
    }
  });

  test("mean and variance are those asked for", () => {
    const chances = Array.from({ length: 400 }, (_, k) => negativeBinomialPmf(k, 12, 1.75));
    expect(meanOf(chances)).toBeCloseTo(12, 10);
    expect(varianceOf(chances)).toBeCloseTo(21, 9);
  });

  test("a dispersion below 1 throws", () => {
    expect(() => negativeBinomialPmf(1, 5, 0.9)).toThrow("dispersion: 0.9");
  });
});

describe("beta-binomial", () => {
  test("with a = b = 1 every count is equally likely", () => {
    for (const chance of betaBinomial(20, 1, 1)) expect(off(chance, 1 / 21)).toBeLessThan(1e-14);
  });

  test("26 trials with a = 14, b = 6 are within 1e-13 of whole-number arithmetic", () => {
    for (const [k, chance] of betaBinomial(26, 14, 6).entries()) {
      expect(off(chance, exactBetaBinomial(k, 26, 14, 6))).toBeLessThan(1e-13);
    }
  });

  test("a library’s log-beta agrees where a and b are no whole numbers", () => {
    const [n, a, b] = [18, 13.3, 5.7];
    for (const [k, chance] of betaBinomial(n, a, b).entries()) {
      const ways = gammaln(n + 1) - gammaln(k + 1) - gammaln(n - k + 1);
      expect(off(chance, Math.exp(ways + betaln(k + a, n - k + b) - betaln(a, b)))).toBeLessThan(1e-12);
    }
  });

  test("no trials leave one count, and shapes of nought throw", () => {
    expect(betaBinomial(0, 2, 3)).toEqual([1]);
    expect(() => betaBinomial(5, 0, 1)).toThrow("a, b: 0, 1");
  });
});

test("a quantile is the least count that is reached with the chance", () => {
  expect(quantileOf([0.25, 0.5, 0.25], 0.25)).toBe(0);
  expect(quantileOf([0.25, 0.5, 0.25], 0.5)).toBe(1);
  expect(quantileOf([0.25, 0.5, 0.25], 1)).toBe(2);
});

test("the mean of the lowest part takes a count in part where the part ends in it", () => {
  // the lowest half: 0.25 of 0 and 0.25 of the 0.5 of 1: 0.25 ÷ 0.5
  expect(meanOfLowest([0.25, 0.5, 0.25], 0.5)).toBe(0.5);
  expect(meanOfLowest([0.25, 0.5, 0.25], 1)).toBe(1);
  expect(() => meanOfLowest([1], 0)).toThrow("part: 0");
});
