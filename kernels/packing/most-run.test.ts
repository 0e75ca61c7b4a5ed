import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { containsPoint, type Polygon, rotatePolygon } from "#kernels/geometry";
import {
  advanceMost,
  areaBound,
  checkPlaced,
  type Floor,
  type Gaps,
  linesPlan,
  mostPlan,
  type Piece,
  startMost,
} from "./index.ts";

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

describe("mostPlan", () => {
  it("proves by area that a square of 5 × 5 holds four of 3 × 2", () => {
    // 25 / 6 = 4.17; the four lie like a pinwheel around a hole of 1 × 1, in lines there is room for 2 only
    const floor = open(rectangle(0, 0, 500, 500));
    const plan = mostPlan(floor, { length: 300, width: 200 }, { side: 0, end: 0, wall: 0 }, [0], 200);
    expect(plan).toMatchObject({ count: 4, bound: 4, proven: true });
  });

  it("holds 28 in an L of 10 by 12 metres where lines hold 25, and proves it", () => {
    const outline: Polygon = [
      [0, 0],
      [10_000, 0],
      [10_000, 5000],
      [4000, 5000],
      [4000, 12_000],
      [0, 12_000],
    ];
    const plan = mostPlan(open(outline), mat, usual, "auto", 1500);
    expect(plan).toMatchObject({ count: 28, bound: 28, proven: true });
    expect(checkPlaced(open(outline), mat, usual, plan.pieces)).toEqual([]);
  });

  it("says none, proven, where not one rectangle fits or the floor has no area", () => {
    expect(mostPlan(open(rectangle(0, 0, 1500, 2400)), mat, usual, "auto", 50)).toMatchObject({
      count: 0,
      bound: 0,
      proven: true,
    });
    const flat: Polygon = [
      [0, 0],
      [1000, 0],
      [2000, 0],
    ];
    expect(mostPlan(open(flat), mat, usual, [0], 50)).toMatchObject({ count: 0, bound: 0, proven: true });
  });

  it("throws on a size that is not a number", () => {
    expect(() =>
      startMost(open(rectangle(0, 0, 900, 900)), { length: Number.NaN, width: 1 }, usual, [0]),
    ).toThrow("not a rectangle");
  });

  it("throws on an axis that is not a number, with its value", () => {
    expect(() => startMost(open(rectangle(0, 0, 9000, 9000)), mat, usual, [0, Number.NaN])).toThrow("NaN");
  });

  it("begins at once on a floor of five hundred corners and keeps what it has when stopped", () => {
    // a wavy round floor of about 14 m across, each corner a little off: hundreds of wall directions
    const outline: Polygon = Array.from({ length: 500 }, (_, i) => {
      const turn = (2 * Math.PI * i) / 500;
      const reach = 7000 + 400 * Math.sin(9 * turn) + (60 * ((i * 7919) % 13)) / 13;
      return [Math.round(reach * Math.cos(turn)), Math.round(reach * Math.sin(turn))] as const;
    });
    const run = advanceMost(startMost(open(outline), mat, usual, "auto"), 4);
    expect(run.axes).toBeGreaterThan(200);
    expect(run.plan.count).toBeGreaterThanOrEqual(50);
    expect(run.plan.bound).toBeLessThanOrEqual(areaBound(open(outline), mat, usual));
    expect(checkPlaced(open(outline), mat, usual, run.plan.pieces)).toEqual([]);
  });

  it("keeps its plan off slivers and off fixtures that touch or lie across one another", () => {
    const floor: Floor = {
      outline: rectangle(0, 0, 8000, 6000),
      fixtures: [
        rectangle(0, 0, 1000, 1000),
        rectangle(1000, 0, 1000, 1000),
        rectangle(1500, 500, 1000, 1000),
        [
          [4000, 3000],
          [6000, 3000],
          [6000, 3001],
        ],
        [
          [5000, 1000],
          [5001, 5000],
          [5000, 5000],
        ],
      ],
      keepClear: [],
    };
    const run = advanceMost(startMost(floor, mat, usual, "auto"), 60);
    expect(run.plan.count).toBeGreaterThan(4);
    expect(run.plan.bound).toBeGreaterThanOrEqual(run.plan.count);
    expect(checkPlaced(floor, mat, usual, run.plan.pieces)).toEqual([]);
  });

  it("comes to the same whether its steps are taken at once or one by one, and a stopped run keeps its plan", () => {
    const floor = open(rectangle(0, 0, 8000, 12_000));
    const whole = advanceMost(startMost(floor, mat, usual, [0], { seed: 5 }), 40);
    let run = startMost(floor, mat, usual, [0], { seed: 5 });
    const first = run.plan;
    const pieces = [...first.pieces];
    for (let step = 0; step < 40; step++) run = advanceMost(run, 1);
    expect(run.plan).toEqual(whole.plan);
    expect(first.pieces).toEqual(pieces);
    expect(checkPlaced(floor, mat, usual, first.pieces)).toEqual([]);
  });

  it("starts with at least what straight lines hold", () => {
    const floor = open(rectangle(0, 0, 9300, 15_700));
    const lines = linesPlan(floor, mat, usual, [0]);
    expect(startMost(floor, mat, usual, [0]).plan.count).toBeGreaterThanOrEqual(lines.count);
  });
});

type Case = { readonly floor: Floor; readonly piece: Piece; readonly gaps: Gaps };

const UNIT = 100;

/** Small upright floors in whole units, with even gaps so that half a gap is whole too, and no wall gap. */
const small: fc.Arbitrary<Case> = fc
  .record({
    steps: fc.array(
      fc.record({ wide: fc.integer({ min: 2, max: 4 }), high: fc.integer({ min: 3, max: 6 }) }),
      {
        minLength: 1,
        maxLength: 2,
      },
    ),
    post: fc.option(fc.record({ x: fc.nat(7), y: fc.nat(5), clear: fc.boolean() }), { nil: null }),
    piece: fc.constantFrom(
      { length: 3, width: 2 },
      { length: 3, width: 1 },
      { length: 4, width: 2 },
      { length: 2, width: 2 },
    ),
    side: fc.constantFrom(0, 0, 2),
    end: fc.constantFrom(0, 0, 2),
  })
  .map(({ steps, post, piece, side, end }) => {
    const outline: [number, number][] = [];
    let x = 0;
    for (const { wide, high } of steps) {
      outline.push([x, high], [x + wide, high]);
      x += wide;
    }
    const shape = [[0, 0] as [number, number], ...outline, [x, 0] as [number, number]];
    const thing = post === null ? [] : [rectangle(post.x, post.y, 1, 1)];
    const scaled = (polygon: Polygon): Polygon => polygon.map(([px, py]) => [UNIT * px, UNIT * py] as const);
    return {
      floor: {
        outline: scaled(shape),
        fixtures: post?.clear === false ? thing.map(scaled) : [],
        keepClear: post?.clear === true ? thing.map(scaled) : [],
      },
      piece: { length: UNIT * piece.length, width: UNIT * piece.width },
      gaps: { side: UNIT * side, end: UNIT * end, wall: 0 },
    };
  });

/**
 * Every plan on whole units tried, leaving out from each place or taking it. Whole units are enough: with upright
 * walls at whole units, whole sizes and whole half gaps any plan can be pushed left and down onto them.
 */
function triedOut({ floor, piece, gaps }: Case): number {
  const places = placesOf(floor, piece, gaps);
  let best = 0;
  const first = places[0];
  const own = first === undefined ? 1 : (first.right - first.left) * (first.top - first.bottom);
  const ceiling = Math.floor(roomOf(places) / own);
  extend(places, 0);
  return best;

  function extend(open: readonly Grown[], count: number): void {
    best = Math.max(best, count);
    const [next, ...rest] = open;
    if (next === undefined || best === ceiling) return;
    if (count + Math.min(open.length, Math.floor(roomOf(open) / own)) <= best) return;
    extend(
      rest.filter((other) => apart(next, other)),
      count + 1,
    );
    extend(rest, count);
  }
}

type Grown = { readonly left: number; readonly right: number; readonly bottom: number; readonly top: number };

function apart(a: Grown, b: Grown): boolean {
  return a.right <= b.left || b.right <= a.left || a.top <= b.bottom || b.top <= a.bottom;
}

/** Unit squares that any of the places covers. */
function roomOf(places: readonly Grown[]): number {
  const squares = new Set<number>();
  for (const { left, right, bottom, top } of places)
    for (let x = left; x < right; x += UNIT)
      for (let y = bottom; y < top; y += UNIT) squares.add((x + 10_000) * 100_000 + y + 10_000);
  return squares.size * UNIT * UNIT;
}

function placesOf(floor: Floor, piece: Piece, gaps: Gaps): readonly Grown[] {
  const places: Grown[] = [];
  for (const [width, height, gapX, gapY] of [
    [piece.length, piece.width, gaps.end, gaps.side],
    [piece.width, piece.length, gaps.side, gaps.end],
  ] as const)
    for (let x = 0; x < 8 * UNIT; x += UNIT)
      for (let y = 0; y < 6 * UNIT; y += UNIT)
        if (isFree(floor, x, y, width, height))
          places.push({
            left: x - gapX / 2,
            right: x + width + gapX / 2,
            bottom: y - gapY / 2,
            top: y + height + gapY / 2,
          });
  return places;
}

function isFree(
  { outline, fixtures, keepClear }: Floor,
  x: number,
  y: number,
  width: number,
  height: number,
): boolean {
  for (let i = UNIT / 2; i < width; i += UNIT)
    for (let j = UNIT / 2; j < height; j += UNIT) {
      const middle = [x + i, y + j] as const;
      if (!containsPoint(outline, middle)) return false;
      if ([...fixtures, ...keepClear].some((thing) => containsPoint(thing, middle))) return false;
    }
  return true;
}

describe("mostPlan on random floors", () => {
  it("never has a bound below what trying every plan finds, and reaches it where it says proven", () => {
    fc.assert(
      fc.property(small, (each) => {
        const known = triedOut(each);
        const run = advanceMost(startMost(each.floor, each.piece, each.gaps, [0]), 84);
        const { plan } = run;
        for (const axis of run.search.axes) expect(axis.limit.bound).toBeGreaterThanOrEqual(known);
        expect(plan.bound).toBeGreaterThanOrEqual(known);
        expect(plan.count).toBeLessThanOrEqual(known);
        if (plan.proven) expect(plan.count).toBe(known);
        expect(checkPlaced(each.floor, each.piece, each.gaps, plan.pieces)).toEqual([]);
      }),
      { numRuns: 100, seed: 31 },
    );
  });

  it("gives allowed plans between the lines and the bound on slanted floors with wall gaps", () => {
    const slanted = fc.record({
      corners: fc.tuple(fc.nat(900), fc.nat(900), fc.nat(900), fc.nat(900)),
      post: fc.tuple(fc.integer({ min: 800, max: 2600 }), fc.integer({ min: 800, max: 2600 })),
      turn: fc.integer({ min: 0, max: 89 }),
      wall: fc.constantFrom(0, 100, 250),
    });
    fc.assert(
      fc.property(slanted, ({ corners: [a, b, c, d], post: [x, y], turn, wall }) => {
        const outline: Polygon = [
          [a, b],
          [4000 - b, c],
          [4200 - c, 3800 - d],
          [d, 4000 - a],
        ];
        const post = rotatePolygon(rectangle(-100, -100, 200, 200), turn).map(
          ([px, py]) => [px + x, py + y] as const,
        );
        const floor = { outline, fixtures: [post], keepClear: [] };
        const piece = { length: 900, width: 400 };
        const gaps = { side: 200, end: 100, wall };
        const run = advanceMost(startMost(floor, piece, gaps, [turn]), 40);
        const { plan } = run;
        // the bound as the weights prove it, which no plan of its own may lift
        for (const axis of run.search.axes) expect(axis.limit.bound).toBeGreaterThanOrEqual(plan.count);
        const lines = linesPlan(floor, piece, gaps, [turn]);
        expect(checkPlaced(floor, piece, gaps, plan.pieces)).toEqual([]);
        expect(plan.pieces).toHaveLength(plan.count);
        expect(plan.count).toBeGreaterThanOrEqual(lines.count);
        expect(plan.bound).toBeGreaterThanOrEqual(plan.count);
        expect(plan.bound).toBeLessThanOrEqual(areaBound(floor, piece, gaps));
      }),
      { numRuns: 4, seed: 32 },
    );
  });
});
