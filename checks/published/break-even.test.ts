// Break-even and sales mix from published worked examples. The products there stand in for people on mats:
// price − variable cost is what one leaves, fixed costs are the cost of the evening.
// - "Price 400, variable 250, fixed 20,000" and the weighted mixes: open textbook chapter on break-even
//   adapted from OpenStax, Principles of Accounting, Volume 2: Managerial Accounting, 3.2 (answers read there)
// - "Price 100, variable 20, fixed 18,000": same section, from memory
// - "Price 50, variable 32, fixed 108,000": published exercise with its answers (read there)
import { breakEvenHeads, contributionOf, type Payer, yieldOf } from "#core/price";
import { minor } from "#core/words";
import { Fraction } from "fraction.js";
import { expect, test } from "vitest";

test("price 400, variable 250, fixed 20,000: 133.33 units, so 134", () => {
  expect(
    new Fraction(20_000)
      .div(400 - 250)
      .round(2)
      .valueOf(),
  ).toBe(133.33);
  expect(breakEvenHeads(20_000, 400 - 250)).toBe(134);
});

test("price 100, variable 20, fixed 18,000: 225 units", () => {
  expect(breakEvenHeads(18_000, 100 - 20)).toBe(225);
});

test("price 50, variable 32, fixed 108,000: 6,000 units, and 36,000 is left at 8,000", () => {
  expect(breakEvenHeads(108_000, 50 - 32)).toBe(6000);
  expect(contributionOf(new Fraction(8000), new Fraction(50 - 32), minor(108_000)).valueOf()).toBe(36_000);
});

test("with the price a tenth lower and a quarter more sold, 22,000 is left", () => {
  // 45 − 32 = 13; 10,000 × 13 − 108,000
  const margin = new Fraction(50).mul("0.9").sub(32);
  expect(contributionOf(new Fraction(8000).mul("1.25"), margin, minor(108_000)).valueOf()).toBe(22_000);
});

/** Whole amounts and their parts of the mix as payers, in hundredths so that they are whole minor units. */
function payers(mix: readonly (readonly [amount: number, parts: number])[]): readonly Payer[] {
  const all = mix.reduce((sum, [, parts]) => sum + parts, 0);
  return mix.map(([amount, parts], index) => ({
    key: `pass-${index + 1}`,
    share: new Fraction(parts, all),
    price: minor(amount * 100),
    classes: 1,
  }));
}

test("contributions 44, 18 and 40 at 30, 40 and 30 per cent weigh 32.40; fixed 583,200 needs 18,000", () => {
  const weighted = yieldOf(
    payers([
      [44, 30],
      [18, 40],
      [40, 30],
    ]),
  );
  expect(weighted.valueOf()).toBe(3240);
  expect(breakEvenHeads(58_320_000, weighted)).toBe(18_000);
});

test("contributions 3, 2 and 1 at 20 : 100 : 80 weigh 1.70; fixed 255,000 needs 150,000", () => {
  const weighted = yieldOf(
    payers([
      [3, 20],
      [2, 100],
      [1, 80],
    ]),
  );
  expect(weighted.valueOf()).toBe(170);
  expect(breakEvenHeads(25_500_000, weighted)).toBe(150_000);
});
