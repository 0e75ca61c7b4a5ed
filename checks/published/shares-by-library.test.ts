// currency.js 2.0.4, distribute(): a sum of money in n parts whose coins add to the sum, from its documentation and run
// here. It puts the larger parts first; ours come in the order in which classes go, so both are compared as
// bags. In Fowler's "Money" pattern (Patterns of Enterprise Application Architecture, 2002, ch. 18) the same
// task is allocate(): 5 cents in halves are 3 and 2 (from memory).
import { shareOf } from "#core/books";
import currency from "currency.js";
import * as fc from "fast-check";
import { expect, test } from "vitest";

function shares(price: number, size: number): readonly number[] {
  return Array.from({ length: size }, (_, index) => shareOf(price, size, index + 1));
}

const rising = (values: readonly number[]): readonly number[] => [...values].sort((a, b) => a - b);

test("any price in any number of classes is cut into the same coins", () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 1_000_000 }), fc.integer({ min: 1, max: 60 }), (price, size) => {
      const theirs = currency(price, { fromCents: true }).distribute(size);
      expect(rising(shares(price, size))).toEqual(rising(theirs.map(({ intValue }) => intValue)));
    }),
  );
});

test("five cents in two are three and two", () => {
  expect(rising(shares(5, 2))).toEqual([2, 3]);
});
