import { isCurrency } from "#core/words";
import * as fc from "fast-check";
import { Fraction } from "fraction.js";
import { expect, test } from "vitest";
import { breakEvenHeads } from "./break-even.ts";
import { readPayers } from "./read-payers.ts";
import { yieldOf } from "./yield.ts";

test("PRICE-4 a cost that the margin divides is paid by the quotient, and a coin more needs a head more", () => {
  // 40.00 ÷ 8.00 = 5; 40.01 ÷ 8.00 = 5.00125
  expect([breakEvenHeads(4000, 800), breakEvenHeads(4001, 800), breakEvenHeads(3999, 800)]).toEqual([
    5, 6, 5,
  ]);
});

test("PRICE-4 thirds of a coin do not push the break-even over an edge", () => {
  // 15 × 4⅓ = 65 exactly; binary numbers make 65 ÷ (13 ÷ 3) a little more than 15 and ask for 16
  expect(Math.ceil(65 / (13 / 3))).toBe(16);
  expect(breakEvenHeads(65, new Fraction(13, 3))).toBe(15);
});

test("PRICE-4 a room that costs nothing is paid for by nobody", () => {
  expect(breakEvenHeads(0, 800)).toBe(0);
});

test("PRICE-5 a head that leaves nothing, or less, never pays, not even for a free room", () => {
  expect([breakEvenHeads(3140, 0), breakEvenHeads(3140, -1), breakEvenHeads(0, 0)]).toEqual([
    null,
    null,
    null,
  ]);
});

test("PRICE-4 the break-even is the least number of heads that does not lose", () => {
  const amount = fc.integer({ min: 0, max: 100_000 });
  fc.assert(
    fc.property(
      amount,
      fc.integer({ min: 1, max: 100_000 }),
      fc.integer({ min: 1, max: 997 }),
      (cost, top, bottom) => {
        // margin = top ÷ bottom: n × top ≥ cost × bottom, in whole numbers
        const heads = breakEvenHeads(cost, new Fraction(top, bottom));
        if (heads === null) throw new Error("a margin above nought pays");
        expect(BigInt(heads) * BigInt(top) >= BigInt(cost) * BigInt(bottom)).toBe(true);
        expect(heads === 0 || BigInt(heads - 1) * BigInt(top) < BigInt(cost) * BigInt(bottom)).toBe(true);
      },
    ),
  );
});

const percents = fc
  .array(fc.integer({ min: 0, max: 100 }), { minLength: 3, maxLength: 3 })
  .map((cuts) => [0, ...cuts.sort((a, b) => a - b), 100])
  .map((cuts) => cuts.slice(1).map((cut, index) => cut - (cuts[index] ?? 0)));
const pennies = fc.integer({ min: 0, max: 20_000 });
const text = (count: number): string => (count / 100).toFixed(2);

test.each(["GBP", "USD"])("PRICE-2 the yield in %s is what whole-number arithmetic gives", (code) => {
  fc.assert(
    fc.property(
      percents,
      pennies,
      pennies,
      pennies,
      fc.integer({ min: 2, max: 50 }),
      (shares, a, b, c, size) => {
        if (!isCurrency(code)) throw new Error(code);
        const [single = 0, pass = 0, concession = 0, free = 0] = shares;
        const mix = {
          single: single / 100,
          [`pass-${size}`]: pass / 100,
          concession: concession / 100,
          free: free / 100,
        };
        const prices = { single: text(a), passes: [{ classes: size, price: text(b) }], concession: text(c) };
        const read = readPayers(prices, mix, code);
        if (!read.ok) throw new Error(JSON.stringify(read.problems));
        // y × 100 × size = (single × a + concession × c) × size + pass × b
        const expected = BigInt(single * a + concession * c) * BigInt(size) + BigInt(pass * b);
        const found = yieldOf(read.value).mul(100 * size);
        expect([found.d, found.s * found.n]).toEqual([1n, expected]);
      },
    ),
  );
});
