import { containsPoint } from "#kernels/geometry";
import { randomOutlines } from "#testing";
import { assert, integer, property } from "fast-check";
import { expect, test } from "vitest";
import { lShapedFloor } from "./floor-start.ts";
import { rectangleAt } from "./floor-shapes.ts";
import { interiorsMeet } from "./interiors-meet.ts";

const ell = lShapedFloor({ width: 10_000, depth: 8000, cutWidth: 4000, cutDepth: 3000 });

test("HALL-5: a shape in the cut of an L, touching both its walls, is not on the floor", () => {
  // the cut is from [6, 5] to [10, 8] m
  expect(interiorsMeet(rectangleAt([6000, 5000], 4000, 3000), ell)).toBe(false);
  expect(interiorsMeet(rectangleAt([5999, 5000], 4000, 3000), ell)).toBe(true);
  expect(interiorsMeet(rectangleAt([6000, 4999], 4000, 3000), ell)).toBe(true);
});

test("HALL-5: a shape whose middle is on a floor meets it, and one past its outermost corners does not", () => {
  const place = integer({ min: -15_000, max: 25_000 });
  assert(
    property(randomOutlines(), place, place, (outline, x, y) => {
      const shape = rectangleAt([x - 100, y - 100], 200, 200);
      if (containsPoint(outline, [x, y])) expect(interiorsMeet(shape, outline)).toBe(true);
      const right = Math.max(...outline.map((corner) => corner[0]));
      expect(interiorsMeet(rectangleAt([right, y], 200, 200), outline)).toBe(false);
    }),
  );
});
