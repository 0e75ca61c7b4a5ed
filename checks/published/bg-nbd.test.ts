// Source: P. Fader, B. Hardie and K. Lee, "Counting your customers the easy way", Marketing Science 24(2), 2005,
// and the authors' worked spreadsheet: r 0.243, alpha 4.414, a 0.793, b 2.426 (weeks, 2,357 people), expected
// repeats, a conditional expectation, and chances of n repeats (read in public reproductions). The people's own
// data does not stand here, so that the fit itself is checked on drawn people, in kernels/survival.
// Four more digits of the parameters are from memory, and used only where rounding to three shows.
import {
  type BgNbd,
  chanceStillComing,
  expectedRepeats,
  expectedVisits,
  repeatChances,
} from "#kernels/survival";
import { expect, test } from "vitest";

const rounded: BgNbd = { r: 0.243, alpha: 4.414, a: 0.793, b: 2.426 };
const finer: BgNbd = { r: 0.2426, alpha: 4.4136, a: 0.7929, b: 2.4259 };

const repeats = [
  [1 / 7, 0.0078],
  [1, 0.0532],
  [3, 0.1506],
  [31.8571, 1.0405],
  [32, 1.0437],
  [78, 1.8576],
] as const;

test.each(repeats)("somebody new comes again in %f weeks %f times", (weeks, times) => {
  // the parameters in three decimals miss by up to two thousandths of it, with four by less than one
  expect(expectedRepeats(rounded, weeks) / times).toBeCloseTo(1, 2);
  expect(Math.abs(expectedRepeats(finer, weeks) - times)).toBeLessThan(0.0006);
});

const seen = { repeats: 2, last: 30.43, span: 38.86 };

test("two repeats, the last in week 30.43 of 38.86: 1.226 visits in the next 39 weeks", () => {
  expect(expectedVisits(rounded, seen, 39)).toBeCloseTo(1.226, 3);
});

test("no repeat in 39 weeks has a chance of 0.5737864", () => {
  expect(repeatChances(rounded, 39, 0)[0]).toBeCloseTo(0.5737864, 7);
});

test("11 to 20 repeats in 30 weeks have the chances of the spreadsheet", () => {
  const listed = [
    0.0019995214, 0.0015170236, 0.001163315, 0.0009003148, 0.0007023638, 0.0005517902, 0.0004361913,
    0.0003467171, 0.0002769613, 0.000222226,
  ];
  for (const [index, chance] of repeatChances(rounded, 30, 20).slice(11).entries()) {
    expect(chance).toBeCloseTo(listed[index] ?? 0, 10);
  }
});

/** Gauss's series F(a, b; c; z), term by term. */
function hypergeometric(a: number, b: number, c: number, z: number): number {
  let term = 1;
  let sum = 1;
  for (let step = 0; step < 20_000 && Math.abs(term) > 1e-17 * Math.abs(sum); step += 1) {
    term *= (((a + step) * (b + step)) / ((c + step) * (step + 1))) * z;
    sum += term;
  }
  return sum;
}

test("the paper's forms with the hypergeometric function give the same as our sum of positive terms", () => {
  const { r, alpha, a, b } = rounded;
  for (const [weeks] of repeats) {
    const z = weeks / (alpha + weeks);
    const plain = ((a + b - 1) / (a - 1)) * (1 - (1 - z) ** r * hypergeometric(r, b, a + b - 1, z));
    expect(expectedRepeats(rounded, weeks) / plain).toBeCloseTo(1, 10);
  }
  const { repeats: x, last, span } = seen;
  const z = 39 / (alpha + span + 39);
  const top =
    ((a + b + x - 1) / (a - 1)) * (1 - (1 - z) ** (r + x) * hypergeometric(r + x, b + x, a + b + x - 1, z));
  const bottom = 1 + (a / (b + x - 1)) * ((alpha + span) / (alpha + last)) ** (r + x);
  expect(expectedVisits(rounded, seen, 39)).toBeCloseTo(top / bottom, 10);
  expect(chanceStillComing(rounded, seen)).toBeCloseTo(1 / bottom, 12);
});
