import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Polygon, rotatePolygon } from "#kernels/geometry";
import {
  areaBound,
  checkPlaced,
  type Floor,
  type Gaps,
  linesByScanning,
  linesPlan,
  type Piece,
} from "./index.ts";

type Case = { readonly floor: Floor; readonly piece: Piece; readonly gaps: Gaps };

function rectangle(x: number, y: number, width: number, depth: number): Polygon {
  return [
    [x, y],
    [x + width, y],
    [x + width, y + depth],
    [x, y + depth],
  ];
}

/** Columns side by side, each with its own low and high end: rectangles, L's, T's, U's and stairs. */
const stairs = fc
  .array(
    fc.record({
      wide: fc.integer({ min: 2, max: 6 }),
      low: fc.nat(4),
      high: fc.integer({ min: 7, max: 14 }),
    }),
    {
      minLength: 1,
      maxLength: 4,
    },
  )
  .map((columns): Polygon => {
    let x = 0;
    const below: [number, number][] = [];
    const above: [number, number][] = [];
    for (const { wide, low, high } of columns) {
      below.push([x, low], [x + wide, low]);
      above.unshift([x + wide, high], [x, high]);
      x += wide;
    }
    return [...below, ...above];
  });

const thing = fc
  .tuple(fc.nat(12), fc.nat(12), fc.integer({ min: 1, max: 3 }), fc.integer({ min: 1, max: 3 }))
  .map(([x, y, width, depth]) => rectangle(x, y, width, depth));

const wall = fc.oneof(
  { weight: 2, arbitrary: fc.constant(0) },
  { weight: 1, arbitrary: fc.integer({ min: 1, max: 2 }) },
);

/** Floors in units of 100 mm, so that a plan on whole centimetres is not a different question. */
const cases: fc.Arbitrary<Case> = fc
  .record({
    outline: stairs,
    fixtures: fc.array(thing, { maxLength: 2 }),
    keepClear: fc.array(thing, { maxLength: 1 }),
    piece: fc.record({ length: fc.integer({ min: 2, max: 4 }), width: fc.integer({ min: 1, max: 2 }) }),
    gaps: fc.record({ side: fc.nat(2), end: fc.nat(2), wall }),
  })
  .map(({ outline, fixtures, keepClear, piece, gaps }) => ({
    floor: {
      outline: scaled(outline),
      fixtures: fixtures.map(scaled),
      keepClear: keepClear.map(scaled),
    },
    piece: { length: 100 * piece.length, width: 100 * piece.width },
    gaps: { side: 100 * gaps.side, end: 100 * gaps.end, wall: 100 * gaps.wall },
  }));

function scaled(polygon: Polygon): Polygon {
  return polygon.map(([x, y]) => [100 * x, 100 * y] as const);
}

function turned({ floor, piece, gaps }: Case, turn: (polygon: Polygon) => Polygon): Case {
  const { outline, fixtures, keepClear } = floor;
  return {
    floor: { outline: turn(outline), fixtures: fixtures.map(turn), keepClear: keepClear.map(turn) },
    piece,
    gaps,
  };
}

function solved({ floor, piece, gaps }: Case, axis = 0) {
  return linesPlan(floor, piece, gaps, [axis]);
}

describe("linesPlan on random floors", () => {
  it("finds as many as a scan of every offset, where whole steps are enough, and at least as many elsewhere", () => {
    fc.assert(
      fc.property(cases, (each) => {
        const plan = solved(each);
        const scanned = linesByScanning(each.floor, each.piece, each.gaps, [0], 100);
        expect(plan.count).toBeGreaterThanOrEqual(scanned);
        // without a wall gap an unparted plan can be pushed down and left onto whole steps
        if (each.gaps.wall === 0 && plan.wings === 1) expect(plan.count).toBe(scanned);
      }),
      { numRuns: 600, seed: 20 },
    );
  });

  it("gives only plans that the checker allows, as many places as it says, and never above its bounds", () => {
    fc.assert(
      fc.property(cases, (each) => {
        const plan = solved(each);
        const placed = plan.lines.flatMap((line) => line.pieces);
        expect(checkPlaced(each.floor, each.piece, each.gaps, placed)).toEqual([]);
        expect(placed).toHaveLength(plan.count);
        expect(plan.count).toBeLessThanOrEqual(plan.bound);
        expect(plan.proven).toBe(plan.count === plan.bound);
        expect(plan.bound).toBeLessThanOrEqual(areaBound(each.floor, each.piece, each.gaps));
      }),
      { numRuns: 800, seed: 21 },
    );
  });

  it("keeps its count when the hall is moved, mirrored, turned by 90 degrees or by any angle", () => {
    const turns = fc.integer({ min: 1, max: 359_999 }).map((thousandths) => thousandths / 1000);
    fc.assert(
      fc.property(cases, turns, (each, degrees) => {
        const { count } = solved(each);
        expect(
          solved(turned(each, (shape) => shape.map(([x, y]) => [x + 1234, y - 77] as const))).count,
        ).toBe(count);
        expect(solved(turned(each, (shape) => shape.map(([x, y]) => [-x, y] as const))).count).toBe(count);
        expect(solved(turned(each, (shape) => rotatePolygon(shape, 90))).count).toBe(count);
        expect(
          solved(
            turned(each, (shape) => rotatePolygon(shape, degrees)),
            degrees,
          ).count,
        ).toBe(count);
      }),
      { numRuns: 250, seed: 22 },
    );
  });

  it("never gains a place from one more fixture", () => {
    fc.assert(
      fc.property(cases, thing, (each, more) => {
        const fuller = {
          ...each,
          floor: { ...each.floor, fixtures: [...each.floor.fixtures, scaled(more)] },
        };
        const [before, after] = [solved(each), solved(fuller)];
        // a new side may suggest a new cut, so only unparted plans are bound to lose
        if (after.wings === 1) expect(after.count).toBeLessThanOrEqual(before.bound);
      }),
      { numRuns: 400, seed: 23 },
    );
  });

  it("says the same when asked twice", () => {
    fc.assert(
      fc.property(cases, (each) => {
        expect(solved(each)).toEqual(solved(each));
      }),
      { numRuns: 100, seed: 24 },
    );
  });
});
