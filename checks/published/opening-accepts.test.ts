// How many to accept so that more than there is room for come with at most a stated risk.
// - mats 12, 16 and 20 at a risk of 5 %, and 400 places at 0.95 and 2 %: computed with a statistics library
// - alike by 0.05: computed with a statistics library (beta-binomial)
// - no-shows Normal(5, 3), 80 for an empty place and 200 for one too many: accept 3.302 more, read in a public worked
//   example (the share 80 ÷ 280 of the no-shows)
// - the largest number N in general: the definition, summed in whole numbers below
import { acceptAtMost, openingAnswer, type Together } from "#core/outlook";
import { binomialAtLeast, normalQuantile } from "#kernels/statistics";
import { describe, expect, test } from "vitest";

const alone: Together = { kind: "alone" };
const free = { hardStop: null, paid: false, together: alone };

describe("mats, a risk of 5 %, and the turn-up of a half, 0.6, 0.7 and 0.8", () => {
  test.each([
    [12, [18, 15, 14, 12]],
    [16, [24, 21, 19, 17]],
  ])("%i mats", (room, accepted) => {
    const found = [0.5, 0.6, 0.7, 0.8].map((turnUp) => acceptAtMost({ ...free, room, turnUp, risk: 0.05 }));
    expect(found).toEqual(accepted);
  });

  test("20 mats at 0.6: 27", () => {
    expect(acceptAtMost({ ...free, room: 20, turnUp: 0.6, risk: 0.05 })).toBe(27);
  });
});

test("400 places, each taken with 0.95, a risk of 2 %: 412", () => {
  expect(acceptAtMost({ ...free, room: 400, turnUp: 0.95, risk: 0.02 })).toBe(412);
});

test("16 mats at 0.6, any two alike by 0.05: 19", () => {
  const together: Together = { kind: "alike", correlation: 0.05 };
  expect(acceptAtMost({ ...free, room: 16, turnUp: 0.6, risk: 0.05, together })).toBe(19);
});

test("the same by counting ways in whole numbers: six of ten come, one number after the other", () => {
  expect([5, 9, 14].map((room) => acceptAtMost({ ...free, room, turnUp: 0.6, risk: 0.05 }))).toEqual(
    [5, 9, 14].map(bySumming),
  );
});

/** The largest N with Σ over x > room of C(N, x) 6^x 4^(N − x) ≤ 10^N ÷ 20, no doubles anywhere. */
function bySumming(room: number): number {
  let accepted = room;
  while (20n * waysOver(accepted + 1, room) <= 10n ** BigInt(accepted + 1)) accepted += 1;
  return accepted;
}

function waysOver(accepted: number, room: number): bigint {
  let ways = 0n;
  let choose = 1n;
  for (let came = 0; came <= accepted; came += 1) {
    if (came > room) ways += choose * 6n ** BigInt(came) * 4n ** BigInt(accepted - came);
    choose = (choose * BigInt(accepted - came)) / BigInt(came + 1);
  }
  return ways;
}

test("by cost, no-shows Normal(5, 3): 3.302 more", () => {
  expect(5 + 3 * normalQuantile(80 / (80 + 200))).toBeCloseTo(3.302, 3);
});

test("by cost in whole people the same share decides: the last one accepted still costs less than she saves", () => {
  const found = openingAnswer({
    mats: 40,
    turnUp: 0.8,
    currency: "GBP",
    costs: { turnedAway: "200.00", emptyMat: "80.00" },
  });
  const accept = found.ok ? (found.value.json.byCost?.accept ?? 0) : 0;
  // one more saves an empty mat, 80, unless the 40 mats are taken already, when she is sent home, 200
  const full = [accept - 1, accept].map((accepted) => binomialAtLeast(40, accepted, 0.8));
  expect(full.map((chance) => chance >= 80 / (80 + 200))).toEqual([false, true]);
});
