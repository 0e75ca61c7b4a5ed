import { describe, expect, it } from "vitest";
import type { Polygon } from "#kernels/geometry";
import { placeDimensions, readable } from "./dimension-placing.ts";
import { fitViewport } from "./viewport.ts";

const square: Polygon = [
  [0, 0],
  [10000, 0],
  [10000, 10000],
  [0, 10000],
];
// 10000 mm on 500 px less two margins of 50: 0.04 px a mm, the floor lies from 50 to 450 both ways
const view = fitViewport(square, { width: 500, maxHeight: 500, margin: 50 });

describe("placeDimensions", () => {
  it("stands below the bottom wall by the offset", () => {
    const [bottom] = placeDimensions(square, view);
    expect(bottom?.from).toEqual([50, 476]); // 450 + 26
    expect(bottom?.length).toBe(10000);
  });

  it("stands outside also when the corners go clockwise", () => {
    const clockwise = square.toReversed();
    const tops = placeDimensions(clockwise, view).map((it) => it.label);
    // the middles of the four figures: 26 px outside 50…450
    expect(new Set(tops.map(([x, y]) => `${Math.round(x)},${Math.round(y)}`))).toEqual(
      new Set(["250,24", "476,250", "250,476", "24,250"]),
    );
  });

  it("turns the figure level and pushes it out when the wall is shorter than its figure", () => {
    const notch: Polygon = [
      [0, 0],
      [10000, 0],
      [10000, 1000],
      [9000, 1000],
      [9000, 10000],
      [0, 10000],
    ];
    const short = placeDimensions(notch, view)[1];
    expect(short?.tight).toBe(true); // 1000 mm is 40 px, the figure needs 52
    expect(short?.angle).toBe(0);
    expect(short?.label[0]).toBeCloseTo(450 + 26 + 14, 6);
  });

  it("never lets a figure stand on its head", () => {
    expect(readable(180)).toBe(0);
    expect(readable(-90)).toBe(-90);
    expect(readable(90)).toBe(-90); // from the right-hand side, as on any plan
    expect(readable(135)).toBe(-45);
    expect(readable(-135)).toBe(45);
  });

  it("marks a wall as crowded where its figure would lie on the next one", () => {
    const step: Polygon = [
      [0, 0],
      [10000, 0],
      [10000, 10000],
      [200, 10000],
      [0, 9800],
    ];
    // 283 mm × 0.04 = 11 px; 9800 mm = 392 px
    expect(placeDimensions(step, view).map((it) => it.crowded)).toEqual([false, false, false, true, false]);
  });
});
