import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Point, Polygon } from "#kernels/geometry";
import { areaBound, checkPlaced, type Floor, type Placed, roundPlan } from "./index.ts";
import { ringBound } from "./ring-bound.ts";

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

/** A room of 64 sides, their corners on a circle around [0, 0]. */
function drum(radius: number): Floor {
  const outline = Array.from({ length: 64 }, (_, side): Point => {
    const turn = (2 * Math.PI * side) / 64;
    return [radius * Math.cos(turn), radius * Math.sin(turn)];
  });
  return { outline, fixtures: [], keepClear: [] };
}

/** Pointing at the centre, its near end so far from it, at that many degrees. */
function radial([x, y]: Point, near: number, degrees: number): Placed {
  const out = near + mat.length / 2;
  const turn = (degrees * Math.PI) / 180;
  return { centre: [x + out * Math.cos(turn), y + out * Math.sin(turn)], angle: degrees % 180 };
}

/** Mats that point at the centre, put down one after the other wherever the numbers say and the rules allow. */
function strewn(floor: Floor, centre: Point, least: number, tries: readonly (readonly [number, number])[]) {
  const placed: Placed[] = [];
  for (const [out, degrees] of tries) {
    const next = [...placed, radial(centre, least + out, degrees)];
    if (checkPlaced(floor, mat, usual, next).length === 0) placed.push(next[next.length - 1]!);
  }
  return placed;
}

describe("ringBound", () => {
  it("lets 11 lie in one ring of a round room that holds ten, where the area would let 28", () => {
    // a corner of the mat is at most 3765 from the middle, so near ends are at most 2022; looked at in steps they seem open
    // to 2050, 1900 with half a gap off. A circle through those near corners, hypot(1900, 555) = 1979, gives each
    // 2 · asin(555 / 1979) = 32.6°: 11.05, so 11. Area: (π · 4.27² and half a gap more) / 2.25 = 28
    expect(ringBound(drum(4270), mat, usual, [0, 0], 2000)).toBe(11);
    expect(roundPlan(drum(4270), mat, usual, [0, 0], 2000)).toMatchObject({
      count: 10,
      bound: 11,
      proven: false,
    });
    expect(areaBound(drum(4270), mat, usual)).toBe(28);
  });

  it("is 0 where no mat can lie, and says nothing where half a gap reaches the centre", () => {
    const box: Floor = { outline: rectangle(0, 0, 1500, 2400), fixtures: [], keepClear: [] };
    expect(ringBound(box, mat, usual, [750, 1200], 1000)).toBe(0);
    expect(ringBound(drum(4270), mat, usual, [0, 0], 150)).toBe(Infinity);
  });

  it("is never below a plan in rings, nor below mats strewn at any angle and distance, on random floors", () => {
    const rooms = fc.record({
      wide: fc.integer({ min: 40, max: 75 }),
      deep: fc.integer({ min: 40, max: 75 }),
      lean: fc.integer({ min: 0, max: 15 }),
      bay: fc.integer({ min: 0, max: 20 }),
      post: fc.tuple(fc.integer({ min: 10, max: 80 }), fc.integer({ min: 10, max: 80 })),
      centre: fc.tuple(fc.integer({ min: 0, max: 100 }), fc.integer({ min: 0, max: 100 })),
      least: fc.integer({ min: 400, max: 2200 }),
      tries: fc.array(
        fc.tuple(fc.integer({ min: 0, max: 4000 }), fc.double({ min: 0, max: 360, noNaN: true })),
        {
          minLength: 60,
          maxLength: 100,
        },
      ),
    });
    fc.assert(
      fc.property(rooms, ({ wide, deep, lean, bay, post, centre, least, tries }) => {
        const outline: Polygon = [
          [0, 0],
          [100 * wide, 100 * lean],
          [100 * wide, 100 * deep],
          [50 * wide, 100 * deep + 100 * bay],
          [100 * lean, 100 * deep],
        ];
        const fixtures = [rectangle(100 * post[0], 100 * post[1], 300, 300)];
        const floor = { outline, fixtures, keepClear: [] };
        const middle: Point = [centre[0] * wide, centre[1] * deep];
        const bound = ringBound(floor, mat, usual, middle, least);
        const plan = roundPlan(floor, mat, usual, middle, least);
        expect(plan.count).toBeLessThanOrEqual(bound);
        // outwards from the centre, so that the strewn mats crowd
        const crowded = [...tries].sort((a, b) => a[0] - b[0]);
        expect(strewn(floor, middle, least, crowded).length).toBeLessThanOrEqual(bound);
        expect(plan.bound).toBeLessThanOrEqual(areaBound(floor, mat, usual));
      }),
      { numRuns: 8, seed: 63 },
    );
  });
});
