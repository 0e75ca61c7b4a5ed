// Demand behind full sessions: a Poisson count cut off at the places (right-censored).
// - 14 places, heads 14 14 12 14 13 14 14 11 14 14: mean 16.09 and 2.82 turned away, computed with a statistics
//   library's optimiser
// - the estimate solves m = (Σ exact + full × m P(D ≥ K − 1) ÷ P(D ≥ K)) ÷ n: the self-consistency of maximum
//   likelihood with missing data, Dempster, Laird and Rubin, Journal of the Royal Statistical Society B 39 (1977);
//   formula from memory, numbers worked out here
import { demandAnswer, demandBehind } from "#core/outlook";
import { expect, test } from "vitest";

const heads = [14, 14, 12, 14, 13, 14, 14, 11, 14, 14];

test("ten weeks of 14 places: 16.09 wanted to come, 2.82 were turned away a session", () => {
  const found = demandAnswer({ capacity: 14, heads });
  if (!found.ok) throw new Error("not ok");
  expect(found.value.json.mean).toBeCloseTo(16.09, 2);
  expect(found.value.json.turnedAwayPerSession).toBeCloseTo(2.82, 2);
  expect(found.value.json.low).toBeLessThan(16.09);
  expect(found.value.json.high).toBeGreaterThan(16.09);
});

test("the same mean by filling in what is missing, again and again", () => {
  let mean = 14;
  for (let round = 0; round < 400; round += 1) {
    const exact = heads.filter((it) => it < 14);
    const filled = exact.reduce((sum, it) => sum + it, 0) + (10 - exact.length) * meanOfFull(mean);
    mean = filled / 10;
  }
  const sessions = heads.map((it) => ({ heads: it, capacity: 14, turnedAway: null, waiting: null }));
  expect(demandBehind(sessions).mean).toBeCloseTo(mean, 9);
});

/** E[D | D ≥ 14], by plain sums. */
function meanOfFull(mean: number): number {
  let term = Math.exp(-mean);
  let [chance, sum] = [0, 0];
  for (let count = 0; count < 200; count += 1) {
    if (count >= 14) {
      chance += term;
      sum += count * term;
    }
    term *= mean / (count + 1);
  }
  return sum / chance;
}
