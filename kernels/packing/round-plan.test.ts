import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Polygon } from "#kernels/geometry";
import { areaBound, checkPlaced, type Floor, roundPlan } from "./index.ts";
import { ringOfAngles } from "./ring-of-angles.ts";

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

describe("roundPlan", () => {
  it("lays one ring of ten in a round room of 4.27 metres where the ring begins two metres from the middle", () => {
    // near ends with half a gap 1850 away: 2 · atan(555 / 1850) = 33.4°, in half degrees 33.5°; 360 / 33.5 = 10.7.
    // Eleven need 32.5°, a ring of 555 / tan(16.25°) + 150 = 2054 mm, whose corners are hypot(3784, 305) = 3796 away;
    // the wall of 64 sides is 4270 · cos(180° / 64) − 500 = 3765 away
    const outline = Array.from({ length: 64 }, (_, side) => {
      const turn = (2 * Math.PI * side) / 64;
      return [4270 * Math.cos(turn), 4270 * Math.sin(turn)] as const;
    });
    const plan = roundPlan(open(outline), mat, usual, [0, 0], 2000);
    expect(plan.count).toBe(10);
    expect(plan.radii).toHaveLength(1);
    expect(checkPlaced(open(outline), mat, usual, plan.lines.flat())).toEqual([]);
  });

  it("lays an arc round a centre at the wall, feet to it", () => {
    const floor = open(rectangle(0, 0, 9000, 9000));
    const plan = roundPlan(floor, mat, usual, [4500, 500], 1500);
    expect(plan.count).toBeGreaterThan(5);
    for (const { centre } of plan.lines.flat())
      expect(Math.hypot(centre[0] - 4500, centre[1] - 500)).toBeGreaterThanOrEqual(1500 + 865 - 1e-6);
    expect(checkPlaced(floor, mat, usual, plan.lines.flat())).toEqual([]);
  });

  it("is empty in a box room and throws on a distance that is none", () => {
    const floor = open(rectangle(0, 0, 1500, 2400));
    expect(roundPlan(floor, mat, usual, [750, 1200], 1000)).toMatchObject({ count: 0, radii: [] });
    expect(() => roundPlan(floor, mat, usual, [0, 0], Number.NaN)).toThrow("distance");
  });

  it("is allowed on random floors, points every mat at the centre and stays within its bound", () => {
    const rooms = fc.record({
      wide: fc.integer({ min: 50, max: 110 }),
      deep: fc.integer({ min: 50, max: 110 }),
      lean: fc.integer({ min: 0, max: 15 }),
      post: fc.tuple(fc.integer({ min: 10, max: 80 }), fc.integer({ min: 10, max: 80 })),
      zone: fc.tuple(fc.integer({ min: 0, max: 80 }), fc.integer({ min: 0, max: 80 })),
      centre: fc.tuple(fc.integer({ min: 0, max: 100 }), fc.integer({ min: 0, max: 100 })),
    });
    fc.assert(
      fc.property(rooms, ({ wide, deep, lean, post, zone, centre }) => {
        const outline: Polygon = [
          [0, 0],
          [100 * wide, 100 * lean],
          [100 * wide, 100 * deep],
          [100 * lean, 100 * deep],
        ];
        const floor = {
          outline,
          fixtures: [rectangle(100 * post[0], 100 * post[1], 300, 300)],
          keepClear: [rectangle(100 * zone[0], 100 * zone[1], 900, 900)],
        };
        const middle = [centre[0] * wide, centre[1] * deep] as const;
        const plan = roundPlan(floor, mat, usual, middle, 1200);
        expect(checkPlaced(floor, mat, usual, plan.lines.flat())).toEqual([]);
        expect(plan.lines.flat()).toHaveLength(plan.count);
        expect(plan.count).toBeLessThanOrEqual(areaBound(floor, mat, usual));
        for (const [ring, line] of plan.lines.entries())
          for (const {
            centre: [x, y],
          } of line)
            expect(Math.hypot(x - middle[0], y - middle[1]) - 865).toBeCloseTo(plan.radii[ring] ?? -1, 6);
      }),
      { numRuns: 7, seed: 61 },
    );
  });
});

describe("ringOfAngles", () => {
  it("agrees with trying every choice on rings of twelve places", () => {
    fc.assert(
      fc.property(
        fc.array(fc.boolean(), { minLength: 12, maxLength: 12 }),
        fc.integer({ min: 1, max: 6 }),
        (free, apart) => {
          let most = 0;
          for (let choice = 0; choice < 2 ** 12; choice++) {
            const chosen = free.flatMap((_, at) => ((choice >> at) & 1 ? [at] : []));
            const fits = chosen.every((at, index) => {
              const next = chosen[index + 1] ?? (chosen[0] ?? 0) + 12;
              return free[at] === true && next - at >= apart;
            });
            if (fits) most = Math.max(most, chosen.length);
          }
          expect(ringOfAngles(free, apart)).toHaveLength(most);
        },
      ),
      { numRuns: 60, seed: 62 },
    );
  });
});
