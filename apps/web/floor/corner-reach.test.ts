import { expect, test } from "vitest";
import { rectangleFloor } from "#core/hall";
import { cornerReach } from "./corner-reach.ts";

test("a corner of a hall can be hit 22 px around it", () => {
  // 6 m × 0.04 px a mm = 240 px to the next corner
  expect(cornerReach(rectangleFloor(6000, 9000), 0, { scale: 0.04 })).toBe(22);
});

test("corners near one another share the ground between them", () => {
  // 1 m is 40 px: 0.45 of that
  expect(cornerReach(rectangleFloor(1000, 9000), 2, { scale: 0.04 })).toBe(18);
});

test("a corner is never smaller than its mark", () => {
  expect(cornerReach(rectangleFloor(100, 9000), 1, { scale: 0.04 })).toBe(7);
});
