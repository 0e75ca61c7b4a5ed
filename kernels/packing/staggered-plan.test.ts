import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Polygon } from "#kernels/geometry";
import { checkPlaced, type Floor, linesPlan, staggeredPlan } from "./index.ts";

const open = (outline: Polygon): Floor => ({ outline, fixtures: [], keepClear: [] });
const mat = { length: 1730, width: 610 };
const usual = { side: 500, end: 300, wall: 500 };

function rectangle(x: number, y: number, width: number, depth: number): Polygon {
  return [
    [x, y],
    [x + width, y],
    [x + width, y + depth],
    [x, y + depth],
  ];
}

describe("staggeredPlan", () => {
  it("shifts every other line by half a pitch: 3 and 2 in a room just wide enough for three side by side", () => {
    // pitch 1110; three take 610 + 2 · 1110 = 2830, with the walls 3830; two lines take 2 · 1730 + 300 = 3760
    const floor = open(rectangle(0, 0, 3830, 4760));
    const plan = staggeredPlan(floor, mat, usual, [0]);
    expect(plan).toMatchObject({ count: 5, bound: 5, proven: true, shift: 555, pitch: 1110 });
    expect(plan.lines.map((line) => line.length).toSorted((a, b) => a - b)).toEqual([2, 3]);
    expect(checkPlaced(floor, mat, usual, plan.lines.flat())).toEqual([]);
  });

  it("holds six where there is room for the half pitch too, as many as straight lines", () => {
    // 3830 + 555 = 4385: both lines hold three
    const floor = open(rectangle(0, 0, 4390, 4760));
    expect(staggeredPlan(floor, mat, usual, [0]).count).toBe(6);
    expect(linesPlan(floor, mat, usual, [0]).count).toBe(6);
  });

  it("gains a mat by a shift of whole centimetres where half a pitch is too much, and still hides nobody", () => {
    // 3830 + 310 = 4140: with 4150 three and three fit when shifted by 310 or 320 instead of 555
    const floor = open(rectangle(0, 0, 4150, 4760));
    const best = staggeredPlan(floor, mat, usual, [0], { shift: "best" });
    expect(staggeredPlan(floor, mat, usual, [0]).count).toBe(5);
    expect(best.count).toBe(6);
    expect(Math.min(best.shift, best.pitch - best.shift)).toBeGreaterThanOrEqual(305);
  });

  it("stands nobody straight behind a neighbour, and is allowed, on random floors", () => {
    const floors = fc.record({
      wide: fc.integer({ min: 30, max: 90 }),
      deep: fc.integer({ min: 30, max: 90 }),
      lean: fc.integer({ min: -8, max: 8 }),
      post: fc.tuple(fc.integer({ min: 8, max: 70 }), fc.integer({ min: 8, max: 70 })),
    });
    fc.assert(
      fc.property(floors, ({ wide, deep, lean, post: [x, y] }) => {
        const outline: Polygon = [
          [0, 0],
          [100 * wide, 100 * Math.max(0, lean)],
          [100 * wide, 100 * deep],
          [100 * Math.max(0, -lean), 100 * deep],
        ];
        const floor = { outline, fixtures: [rectangle(100 * x, 100 * y, 300, 300)], keepClear: [] };
        const plan = staggeredPlan(floor, mat, usual, [0]);
        expect(checkPlaced(floor, mat, usual, plan.lines.flat())).toEqual([]);
        expect(plan.lines.flat()).toHaveLength(plan.count);
        const radians = (plan.direction * Math.PI) / 180;
        const along = plan.lines.map((line) =>
          line.map(({ centre: [cx, cy] }) => cx * Math.cos(radians) + cy * Math.sin(radians)),
        );
        for (const [index, line] of along.entries())
          for (const place of line)
            for (const before of along[index - 1] ?? [])
              expect(Math.abs(place - before)).toBeGreaterThan(304.9);
      }),
      { numRuns: 60, seed: 41 },
    );
  });

  it("never holds more than straight lines may", () => {
    fc.assert(
      fc.property(fc.integer({ min: 30, max: 120 }), fc.integer({ min: 30, max: 120 }), (wide, deep) => {
        const floor = open(rectangle(0, 0, 100 * wide, 100 * deep));
        expect(staggeredPlan(floor, mat, usual, [0], { along: "either" }).count).toBeLessThanOrEqual(
          linesPlan(floor, mat, usual, [0]).bound,
        );
      }),
      { numRuns: 40, seed: 42 },
    );
  });
});
