import * as fc from "fast-check";
import { expect, test } from "vitest";
import { likeliestMean, meanQuantiles, type SeenCount, seenLogLikelihood } from "./censored-poisson.ts";

const exact = (count: number): SeenCount => ({ kind: "exact", count });
const atLeast = (count: number): SeenCount => ({ kind: "at least", count });

/** Slow and plain: the products of the definition, no shared code. */
function plainLikelihood(seen: readonly SeenCount[], mean: number): number {
  const pmf = (count: number): number => {
    let chance = Math.exp(-mean);
    for (let step = 1; step <= count; step += 1) chance *= mean / step;
    return chance;
  };
  return seen.reduce((product, { kind, count }) => {
    if (kind === "exact") return product * pmf(count);
    let below = 0;
    for (let each = 0; each < count; each += 1) below += pmf(each);
    return product * (1 - below);
  }, 1);
}

test("two seen once, one or more twice: e^(−m) m² ÷ 2 × (1 − e^(−m))²", () => {
  const mean = 1.7;
  const chance = ((Math.exp(-mean) * mean ** 2) / 2) * (1 - Math.exp(-mean)) ** 2;
  expect(seenLogLikelihood([exact(2), atLeast(1), atLeast(1)], mean)).toBeCloseTo(Math.log(chance), 12);
});

test("nought seen once and one or more once is likeliest at ln 2: e^(−m)(1 − e^(−m))", () => {
  expect(likeliestMean([exact(0), atLeast(1)])).toBeCloseTo(Math.log(2), 12);
});

test("counts that are all known have their average; nothing known but full has no top", () => {
  expect(likeliestMean([exact(3), exact(8)])).toBeCloseTo(5.5, 12);
  expect(likeliestMean([exact(0), exact(0)])).toBe(0);
  expect(likeliestMean([atLeast(3), atLeast(8)])).toBeNull();
  expect(likeliestMean([atLeast(0)])).toBe(0);
});

test("the likeliest mean is where a slow plain grid of the likelihood has its top", () => {
  const count = fc.integer({ min: 0, max: 12 });
  const kind = fc.constantFrom("exact" as const, "at least" as const);
  const some = fc.array(fc.record({ kind, count }), { minLength: 1, maxLength: 8 });
  fc.assert(
    fc.property(some, count, (others, one) => {
      const seen = [...others, exact(one)];
      const found = likeliestMean(seen) ?? Number.NaN;
      const grid = Array.from({ length: 4000 }, (_, at) => at / 100);
      const top = grid.reduce((best, mean) =>
        plainLikelihood(seen, mean) > plainLikelihood(seen, best) ? mean : best,
      );
      expect(Math.abs(found - top)).toBeLessThanOrEqual(0.0101);
    }),
    { numRuns: 40 },
  );
});

test("one exact nought makes the weight of the means e^(−m): half of it lies below ln 2", () => {
  const [half = 0, nine = 0] = meanQuantiles([exact(0)], 30, [0.5, 0.9]);
  expect(half).toBeCloseTo(Math.log(2), 2);
  expect(nine).toBeCloseTo(Math.log(10), 2);
});
