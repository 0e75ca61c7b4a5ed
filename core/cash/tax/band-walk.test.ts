import * as fc from "fast-check";
import { Fraction } from "fraction.js";
import { expect, test } from "vitest";
import { builtInTables } from "../index.ts";
import { bandTax, bandWalk } from "./band-walk.ts";
import type { Band } from "./tax-types.ts";

const everyBands: readonly (readonly Band[])[] = builtInTables().flatMap((table) =>
  table.rules === "uk" ? [table.bands] : [table.bands.single, table.bands.joint],
);

/** Unit by unit of a hundred coins, each at the rate of the band it lies in: slow, plain, and no sum of parts. */
function plainWalk(coins: number, bands: readonly Band[]): Fraction {
  let tax = new Fraction(0);
  for (let at = 0; at < coins; at += 10_000) {
    const step = Math.min(10_000, coins - at);
    for (let coin = at; coin < at + step; ) {
      const band = bands.find(({ upTo }) => upTo === null || coin < upTo);
      if (band === undefined) throw new RangeError("no band");
      const end = Math.min(at + step, band.upTo ?? Number.POSITIVE_INFINITY);
      tax = tax.add(band.rate.mul(end - coin));
      coin = end;
    }
  }
  return tax;
}

test("CASH-27: a plain walk through the bands agrees, to half a coin for each band", () => {
  fc.assert(
    fc.property(fc.constantFrom(...everyBands), fc.integer({ min: 0, max: 90_000_000 }), (bands, coins) => {
      const parts = bandWalk(coins, bands);
      expect(parts.reduce((sum, part) => sum + part.coins, 0)).toBe(coins);
      expect(Math.abs(plainWalk(coins, bands).sub(bandTax(parts)).valueOf())).toBeLessThanOrEqual(
        parts.length / 2,
      );
    }),
    { numRuns: 60 },
  );
});

test("CASH-27: half a coin goes up: 5 coins at a tenth are a coin", () => {
  expect(bandWalk(5, [{ upTo: null, rate: new Fraction(1, 10) }])).toMatchObject([{ coins: 5, tax: 1 }]);
});
