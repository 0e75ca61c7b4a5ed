import { containsPoint, type Point } from "#kernels/geometry";
import { randomOutlines } from "#testing";
import { assert, constantFrom, property } from "fast-check";
import { expect, test } from "vitest";
import { hatching } from "./hatching.ts";

test("PAPER-9: level strokes across a square of 10 mm every 4 mm are two, from edge to edge", () => {
  const square: Point[] = [
    [0, 1],
    [10, 1],
    [10, 11],
    [0, 11],
  ];
  // at 4 and 8 of 1 to 11
  const level = hatching(square, 0, 4).map((stroke) => stroke.map(([x, y]) => [x, y]));
  expect(level.map((stroke) => stroke.toSorted((a, b) => (a[0] ?? 0) - (b[0] ?? 0)))).toEqual([
    [
      [0, 4],
      [10, 4],
    ],
    [
      [0, 8],
      [10, 8],
    ],
  ]);
});

test("PAPER-9: the middle of every stroke lies in the shape, whatever its form", () => {
  assert(
    property(randomOutlines(), constantFrom(0, 45, -45, 30), (shape, degrees) => {
      const strokes = hatching(shape, degrees, 400);
      expect(strokes.length).toBeGreaterThan(0);
      for (const [a, b] of strokes)
        if (Math.hypot(b[0] - a[0], b[1] - a[1]) > 1)
          expect(containsPoint(shape, [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2])).toBe(true);
    }),
  );
});
