import { assert, integer, property } from "fast-check";
import { expect, test } from "vitest";
import { rectangleFloor } from "./floor-start.ts";
import { snapInLine } from "./snap-in-line.ts";

const room = rectangleFloor(8000, 12_000);

test("HALL-29: a corner near the line of its neighbour takes that line", () => {
  // corner 2 lies beside corner 1 at x = 8000 and corner 3 at y = 12000
  expect(snapInLine(room, 2, [8040, 13_000], 100)).toEqual([8000, 13_000]);
  expect(snapInLine(room, 2, [9000, 11_930], 100)).toEqual([9000, 12_000]);
  expect(snapInLine(room, 2, [8040, 13_000], 20)).toEqual([8040, 13_000]);
});

test("HALL-29: where both neighbours are near it is the nearer one", () => {
  const narrow = [
    [0, 0],
    [100, 0],
    [3000, 3000],
  ] as const;
  // beside corner 2: x = 100 and x = 0
  expect(snapInLine(narrow, 2, [70, 3000], 90)[0]).toBe(100);
});

test("HALL-29: a corner never goes further than the reach", () => {
  const places = property(
    integer({ min: -2000, max: 14_000 }),
    integer({ min: -2000, max: 14_000 }),
    (x, y) => {
      const [atX, atY] = snapInLine(room, 1, [x, y], 120);
      expect(Math.abs(atX - x)).toBeLessThanOrEqual(120);
      expect(Math.abs(atY - y)).toBeLessThanOrEqual(120);
    },
  );
  assert(places);
});
