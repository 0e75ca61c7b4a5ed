import { expect, test } from "vitest";
import { withoutNoise } from "./without-noise.ts";

test("PRICE-90 numbers end after twelve digits, and texts, whole numbers and nulls stay as they are", () => {
  const answer = { a: [1 / 3, 14, null], b: { c: "0.3333333333333333", d: 2.5e-10 / 3, e: true } };
  expect(withoutNoise(answer)).toEqual({
    a: [0.333333333333, 14, null],
    b: { c: "0.3333333333333333", d: 8.33333333333e-11, e: true },
  });
});
