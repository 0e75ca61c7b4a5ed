// Prepaid rights that part of the holders never use: a prepayment is a liability, and expected leftovers are
// earned in proportion to use. Rule: IFRS 15, B44 to B47; ASC 606-10-55-46 to 49 (read).
// - sales of 100,000 with points of 9,000, expected use 97 % and then 99 % of 10,000: KPMG, Revenue: IFRS 15
//   handbook (2019), example 10A (read)
// - 100,000 of sales with points worth 9,500 by themselves: IFRS 15, illustrative example 52 (from memory,
//   its arithmetic done again)
// The product's own books take leftovers as income only when a pass runs out; this is the comparison.
import { earnedInProportion, owedClasses } from "#core/price";
import { minor } from "#core/words";
import { Fraction } from "fraction.js";
import { expect, test } from "vitest";

test("points of 9,000: 4,500 of 9,700 used earn 4,175, and 8,500 of 9,900 earn 3,552 more", () => {
  const second = earnedInProportion(9000, 4500, 9700).round();
  expect(second.valueOf()).toBe(4175);
  expect(earnedInProportion(9000, 8500, 9900).sub(second).round().valueOf()).toBe(3552);
});

test("points of 8,676: 4,500 of 9,500 used earn 4,110, and 8,500 of 9,700 earn 3,493 more", () => {
  // 100,000 shared by 100,000 and 9,500: 91,324 and 8,676
  const points = new Fraction(100_000).mul(9500).div(109_500).round();
  expect(points.valueOf()).toBe(8676);
  const first = earnedInProportion(points, 4500, 9500).round();
  expect(first.valueOf()).toBe(4110);
  expect(earnedInProportion(points, 8500, 9700).sub(first).round().valueOf()).toBe(3493);
});

test("by use alone the same 9,000 for 10,000 rights still owes 4,950 when 4,500 are used", () => {
  // 9,000 × 5,500 ÷ 10,000: the books owe more than the 4,825 of the comparison
  const owed = owedClasses([{ price: minor(9000), classes: 10_000, left: 5500 }]);
  expect(owed.amount.valueOf()).toBe(4950);
});
