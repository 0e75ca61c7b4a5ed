// Source: P. Fader, B. Hardie and J. Shang, "Customer-base analysis in a discrete-time noncontractual setting",
// Marketing Science 29(6), 2010: alpha 1.204, beta 0.750, gamma 0.657, delta 2.783 for six yearly chances, and
// three chances of being there in the seventh year (read in public reproductions).
// The chances of every pattern and the expectations are checked against plain sums in kernels/survival.
import { type BgBb, bgBbLogLikelihood, chanceThereAt, expectedTaken } from "#kernels/survival";
import { expect, test } from "vitest";

const parameters: BgBb = { alpha: 1.204, beta: 0.75, gamma: 0.657, delta: 2.783 };

test.each([
  [0, 0, "0.11"],
  [2, 4, "0.59"],
  [6, 6, "0.93"],
] as const)("%i of six chances taken, the last the %i-th: still there with %s", (taken, last, chance) => {
  expect(chanceThereAt(parameters, { taken, last, chances: 6 }, 1).toFixed(2)).toBe(chance);
});

test("who was seen later is surer to be there, and to come more, than who took as many earlier", () => {
  for (let last = 3; last <= 6; last += 1) {
    const earlier = { taken: 2, last: last - 1, chances: 6 };
    const later = { taken: 2, last, chances: 6 };
    expect(chanceThereAt(parameters, later, 1)).toBeGreaterThan(chanceThereAt(parameters, earlier, 1));
    expect(expectedTaken(parameters, later, 5)).toBeGreaterThan(expectedTaken(parameters, earlier, 5));
  }
});

test("the chances of all numbers taken in six add to one, each in all its orders", () => {
  let sum = 0;
  for (let pattern = 0; pattern < 64; pattern += 1) {
    const years = pattern.toString(2).padStart(6, "0");
    const taken = years.replaceAll("0", "").length;
    const last = years.lastIndexOf("1") + 1;
    sum += Math.exp(bgBbLogLikelihood(parameters, { taken, last, chances: 6 }));
  }
  expect(sum).toBeCloseTo(1, 12);
});
