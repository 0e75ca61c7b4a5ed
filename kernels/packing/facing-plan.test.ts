import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Polygon, rotatePolygon } from "#kernels/geometry";
import { areaBound, checkPlaced, facingPlan, type Floor, linesPlan } from "./index.ts";

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

describe("facingPlan", () => {
  it("lays two rows of five that face a middle of two metres in a room that holds just that", () => {
    // across: 500 + 1730 + 2000 + 1730 + 500 = 6460; along: five take 610 + 4 · 1110 = 5050, with the walls 6050
    const floor = open(rectangle(0, 0, 6050, 6460));
    const plan = facingPlan(floor, mat, usual, [0], 2000);
    expect(plan).toMatchObject({ count: 10, bound: 10, proven: true, direction: 0 });
    expect(plan.middle).toEqual({ from: 2230, to: 4230 });
    expect(plan.lines.map((line) => line.length)).toEqual([5, 5]);
    expect(checkPlaced(floor, mat, usual, plan.lines.flat())).toEqual([]);
  });

  it("is empty where the middle leaves room for one bank only, or for none", () => {
    const floor = open(rectangle(0, 0, 3000, 4000));
    expect(facingPlan(floor, mat, usual, [0], 2000)).toMatchObject({ count: 0, middle: null, proven: true });
  });

  it("throws on a middle that has no width", () => {
    expect(() => facingPlan(open(rectangle(0, 0, 900, 900)), mat, usual, [0], Number.NaN)).toThrow("middle");
  });

  it("keeps the middle clear, is allowed, and finds as many as any middle tried every 10 cm with two zones of lines", () => {
    const rooms = fc.record({
      wide: fc.integer({ min: 50, max: 100 }),
      deep: fc.integer({ min: 50, max: 100 }),
      cut: fc.integer({ min: 0, max: 20 }),
      middle: fc.integer({ min: 8, max: 25 }),
      post: fc.tuple(fc.integer({ min: 10, max: 60 }), fc.integer({ min: 10, max: 60 })),
    });
    fc.assert(
      fc.property(rooms, ({ wide, deep, cut, middle, post: [x, y] }) => {
        const outline: Polygon = [
          [0, 0],
          [100 * wide, 0],
          [100 * wide, 100 * (deep - cut)],
          [100 * (wide - cut), 100 * deep],
          [0, 100 * deep],
        ];
        const floor = { outline, fixtures: [rectangle(100 * x, 100 * y, 300, 300)], keepClear: [] };
        const plan = facingPlan(floor, mat, usual, [0], 100 * middle);
        expect(checkPlaced(floor, mat, usual, plan.lines.flat())).toEqual([]);
        expect(plan.lines.flat()).toHaveLength(plan.count);
        expect(plan.bound).toBeLessThanOrEqual(areaBound(floor, mat, usual));
        if (plan.middle !== null) {
          const turned = plan.lines
            .flat()
            .map(({ centre }) => rotatePolygon([centre], -plan.direction)[0]?.[1] ?? 0);
          const low = Math.min(...rotatePolygon(outline, -plan.direction).map(([, py]) => py));
          for (const at of turned) {
            const [from, to] = [at - 865 - low, at + 865 - low];
            expect(to <= plan.middle.from + 1e-3 || from >= plan.middle.to - 1e-3).toBe(true);
          }
        }
        expect(plan.count).toBeGreaterThanOrEqual(byTrying(floor, 100 * wide, 100 * deep, 100 * middle));
      }),
      { numRuns: 12, seed: 51 },
    );
  });
});

/** Lines side by side along x, below and above a middle at every 10 cm, by laying each half as a floor of its own. */
function byTrying(floor: Floor, wide: number, deep: number, middle: number): number {
  let best = 0;
  for (let edge = 0; edge + middle <= deep; edge += 100) {
    const halves = [
      [rectangle(-1, edge, wide + 2, deep)],
      [rectangle(-1, -1, wide + 2, edge + middle + 1)],
    ].map((zones) => alongX({ ...floor, keepClear: zones }));
    if (halves.every((count) => count > 0)) best = Math.max(best, halves[0]! + halves[1]!);
  }
  return best;
}

function alongX(floor: Floor): number {
  const plan = linesPlan(floor, mat, usual, [0]);
  // the best of all ways is a fair witness only where it is the way that facing banks lie
  return plan.direction === 0 && plan.along === "width" && plan.wings === 1 ? plan.count : 0;
}
