import { expect, test } from "vitest";
import { linesScale } from "./lines-scale.ts";

const rising = [
  { x: 5, y: -10 },
  { x: 10, y: 50 },
  { x: 15, y: 20 },
];

test("every point of a line lies inside the drawing", () => {
  for (const width of [280, 640, 1000]) {
    const scale = linesScale([rising], width);
    for (const { x, y } of rising) {
      expect(scale.x(x)).toBeGreaterThanOrEqual(scale.left);
      expect(scale.x(x)).toBeLessThanOrEqual(width);
      expect(scale.y(y)).toBeGreaterThanOrEqual(scale.top);
      expect(scale.y(y)).toBeLessThanOrEqual(scale.height - scale.foot);
    }
    expect(scale.yTicks).toContain(0);
  }
});

test("a line that falls far below nothing is cut off no deeper than it is high", () => {
  const scale = linesScale([[...rising, { x: 20, y: -900 }]], 640);
  expect(Math.min(...scale.yTicks)).toBe(-60);
  expect(scale.y(-900)).toBe(scale.height - scale.foot);
});

test("a phone has room for few figures under the line", () => {
  expect(linesScale([rising], 280).xTicks.length).toBeLessThanOrEqual(3);
});

test("lines that all lose, and a single price, still have a place each", () => {
  const scale = linesScale([[{ x: 8, y: -30 }]], 400);
  expect(Number.isFinite(scale.x(8))).toBe(true);
  expect(Number.isFinite(scale.y(-30))).toBe(true);
});
