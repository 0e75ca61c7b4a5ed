// Source: the 6-MP group of E. Freireich and others, Blood 21, 1963, a public data set that textbooks reprint
// (D. Kleinbaum and M. Klein, Survival Analysis, 3rd ed., chapter 2): weeks in remission, + where the end was not
// seen. The curve and Greenwood's errors were computed with an independent library, and match the textbook's
// table from memory.
import { kaplanMeier } from "#kernels/survival";
import { Fraction } from "fraction.js";
import { expect, test } from "vitest";

const weeks = "6 6 6 6+ 7 9+ 10 10+ 11+ 13 16 17+ 19+ 20+ 22 23 25+ 32+ 32+ 34+ 35+".split(" ");
const watched = weeks.map((text) => ({ time: Number.parseInt(text, 10), ended: !text.endsWith("+") }));

const table = [
  [6, 0.8571, 0.0764],
  [7, 0.8067, 0.0869],
  [10, 0.7529, 0.0963],
  [13, 0.6902, 0.1068],
  [16, 0.6275, 0.1141],
  [22, 0.5378, 0.1282],
  [23, 0.4482, 0.1346],
] as const;

test.each(table)("in week %i the curve is at %f, with an error of %f", (week, survival, error) => {
  const step = kaplanMeier(watched, 1.96).find((it) => it.time === week);
  expect(step?.survival).toBeCloseTo(survival, 4);
  expect(step?.standardError).toBeCloseTo(error, 4);
});

test("there is no other step, and fractions worked by hand give the same curve and errors", () => {
  const steps = kaplanMeier(watched, 1.96);
  expect(steps.map((it) => it.time)).toEqual(table.map(([week]) => week));
  let share = new Fraction(1);
  let sum = new Fraction(0);
  for (const step of steps) {
    const there = watched.filter((it) => it.time >= step.time).length;
    const ended = watched.filter((it) => it.ended && it.time === step.time).length;
    share = share.mul(new Fraction(there - ended, there));
    sum = sum.add(new Fraction(ended, there * (there - ended)));
    expect(step.survival).toBeCloseTo(share.valueOf(), 14);
    expect(step.standardError ** 2).toBeCloseTo(share.mul(share).mul(sum).valueOf(), 14);
  }
});
