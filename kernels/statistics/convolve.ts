import type { Distribution } from "./distribution.ts";

// Twenty orders below a certainty: dropped, a term's thousands of such chances together do not reach a double's
// last digit, and the sum of forty evenings takes a tenth of the time.
const NOTHING = 1e-20;

/** The distribution of the sum of two independent counts, exact up to the rounding of doubles. */
export function convolve(first: Distribution, second: Distribution): Distribution {
  const sum = Array.from({ length: first.length + second.length - 1 }, () => 0);
  const [from, until] = reach(second);
  for (const [one, chance] of first.entries()) {
    if (chance < NOTHING) continue;
    for (let other = from; other <= until; other += 1) {
      sum[one + other] = (sum[one + other] ?? 0) + chance * (second[other] ?? 0);
    }
  }
  return sum;
}

/** The least and the largest count that has any chance to speak of. */
function reach(distribution: Distribution): readonly [number, number] {
  return [distribution.findIndex(isSomething), distribution.findLastIndex(isSomething)];
}

/** The sum of as many independent counts of one kind: 40 evenings of at most 20 people in about 40 steps. */
export function convolveTimes(distribution: Distribution, times: number): Distribution {
  if (!Number.isInteger(times) || times < 0) throw new RangeError(`times: ${times}`);
  let sum: Distribution = [1];
  for (let step = 0; step < times; step += 1) sum = convolve(sum, distribution);
  return sum;
}

function isSomething(chance: number): boolean {
  return chance >= NOTHING;
}
