import { expect, test } from "vitest";
import { plotScale, roundTicks } from "./plot-scale.ts";

test("the figures beside the plot are round, hold every amount and nothing itself", () => {
  // span 34.6 + 94.2 = 128.8, a fifth is 25.76, the next round step 50
  expect(roundTicks(-34.6, 94.2)).toEqual([-50, 0, 50, 100]);
  // span 0.9, a fifth is 0.18, the next round step 0.2
  expect(roundTicks(-0.3, 0.6)).toEqual([-0.4, -0.2, 0, 0.2, 0.4, 0.6]);
});

test("a plot of nothing has a scale all the same", () => {
  expect(roundTicks(0, 0)).toEqual([0, 1]);
});

test("more is higher, more people are further right, and all stays inside", () => {
  const rows = [
    { heads: 0, amount: -30 },
    { heads: 1, amount: -22 },
    { heads: 2, amount: 40 },
  ];
  const scale = plotScale(rows, 360);
  for (const { heads, amount } of rows) {
    expect(scale.x(heads) + scale.bar / 2).toBeLessThanOrEqual(scale.width);
    expect(scale.y(amount)).toBeGreaterThanOrEqual(0);
    expect(scale.y(amount)).toBeLessThanOrEqual(scale.height - scale.foot);
  }
  expect(scale.y(40)).toBeLessThan(scale.y(-22));
  expect(scale.x(2)).toBeGreaterThan(scale.x(1));
});
