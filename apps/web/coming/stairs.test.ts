import { expect, test } from "vitest";
import { stairs } from "./stairs.ts";

test("the line is level until a step and falls at it", () => {
  const line = stairs([
    { period: 1, share: 0.8 },
    { period: 4, share: 0.6 },
  ]);
  expect(line.map(({ x, y }) => [x, Math.round(y)])).toEqual([
    [0, 100],
    [1, 100],
    [1, 80],
    [4, 80],
    [4, 60],
  ]);
});
