import type { Distribution } from "./distribution.ts";

/** The distribution of the sum of two independent counts, exact up to the rounding of doubles. */
export function convolve(first: Distribution, second: Distribution): Distribution {
  const sum = Array.from({ length: first.length + second.length - 1 }, () => 0);
  for (const [one, chance] of first.entries()) {
    if (chance === 0) continue;
    for (const [other, also] of second.entries()) {
      sum[one + other] = (sum[one + other] ?? 0) + chance * also;
    }
  }
  return sum;
}

/** The sum of as many independent counts of one kind: 40 evenings of at most 20 people in about 40 steps. */
export function convolveTimes(distribution: Distribution, times: number): Distribution {
  if (!Number.isInteger(times) || times < 0) throw new RangeError(`times: ${times}`);
  let sum: Distribution = [1];
  for (let step = 0; step < times; step += 1) sum = convolve(sum, distribution);
  return sum;
}
