// How long a pass must run, at a confidence of 85 %: classes and attendance against teaching weeks.
// Source: computed with an independent statistics library from the definition, T the least with
// P(Binomial(T, a) ≥ k) ≥ 0.85; the same values from plain whole-number arithmetic below.
import { passUseBy } from "#core/price";
import { expect, test } from "vitest";

const table = [
  [5, 75, 8],
  [5, 65, 10],
  [5, 55, 12],
  [10, 75, 15],
  [10, 65, 18],
  [10, 55, 22],
] as const;

test.each(table)("%i classes at %i %% need %i teaching weeks", (classes, percent, weeks) => {
  const found = passUseBy({ classes, attendance: percent / 100 });
  expect(found.ok && found.value.teachingWeeks).toBe(weeks);
});

/** Ways of fewer than k of n at percent : 100 − percent, out of 100^n. */
function waysBelow(k: number, n: number, percent: number): bigint {
  let ways = 1n;
  let sum = 0n;
  for (let count = 0; count < k; count += 1) {
    sum += ways * BigInt(percent) ** BigInt(count) * BigInt(100 - percent) ** BigInt(n - count);
    ways = (ways * BigInt(n - count)) / BigInt(count + 1);
  }
  return sum;
}

test.each(table)(
  "%i classes at %i %%: whole numbers say that %i is enough and one fewer is not",
  (k, percent, n) => {
    // fewer than k at most 15 of 100 times
    expect(waysBelow(k, n, percent) * 100n <= 15n * 100n ** BigInt(n)).toBe(true);
    expect(waysBelow(k, n - 1, percent) * 100n <= 15n * 100n ** BigInt(n - 1)).toBe(false);
  },
);
