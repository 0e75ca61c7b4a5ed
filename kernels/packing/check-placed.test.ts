import * as Flatten from "@flatten-js/core";
import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { polygonDistance } from "#kernels/geometry";
import { checkPlaced, type Floor, type Placed, rectangleOf } from "./index.ts";

const piece = { length: 1800, width: 600 };
const gaps = { side: 500, end: 300, wall: 400 };
const hall: Floor = {
  outline: [
    [0, 0],
    [8000, 0],
    [8000, 6000],
    [0, 6000],
  ],
  fixtures: [],
  keepClear: [],
};

function lying(x: number, y: number, angle = 0): Placed {
  return { centre: [x, y], angle };
}

function kinds(floor: Floor, ...placed: Placed[]) {
  return checkPlaced(floor, piece, gaps, placed).map((fault) => fault.kind);
}

describe("checkPlaced", () => {
  it("allows a rectangle exactly the wall gap from two walls, and not a hundredth of a millimetre closer", () => {
    // 400 + 1800 / 2 = 1300 from the left, 400 + 600 / 2 = 700 from below
    expect(kinds(hall, lying(1300, 700))).toEqual([]);
    expect(kinds(hall, lying(1299.99, 700))).toEqual(["too near a wall"]);
    expect(kinds(hall, lying(1300, 699.99))).toEqual(["too near a wall"]);
  });

  it("tells a rectangle that lies across a wall, outside, or round a corner that sticks in", () => {
    const notched: Floor = {
      ...hall,
      outline: [...hall.outline.slice(0, 2), [8000, 6000], [4000, 300], [0, 6000]],
    };
    expect(kinds(hall, lying(0, 3000))).toEqual(["outside"]);
    expect(kinds(hall, lying(-3000, 3000))).toEqual(["outside"]);
    expect(kinds(notched, lying(4000, 300))).toEqual(["outside"]);
  });

  it("keeps the wall gap from a fixture but lets a zone be touched", () => {
    const block = [
      [3000, 3000],
      [4000, 3000],
      [4000, 4000],
      [3000, 4000],
    ] as const;
    // the nearest side at 3000: a centre at 3000 - 900 = 2100 touches, at 1700 keeps 400
    const [beside, zoned] = [
      { ...hall, fixtures: [block] },
      { ...hall, keepClear: [block] },
    ];
    expect(kinds(beside, lying(1700, 3500))).toEqual([]);
    expect(kinds(beside, lying(1700.01, 3500))).toEqual(["too near a fixture"]);
    expect(kinds(zoned, lying(2100, 3500))).toEqual([]);
    expect(kinds(zoned, lying(2100.01, 3500))).toEqual(["in a clear zone"]);
    expect(kinds(zoned, lying(3500, 3500))).toEqual(["in a clear zone"]);
  });

  it("measures round a corner as the crow flies: 240 across and 320 up is 400", () => {
    const block = [
      [4000, 4000],
      [5000, 4000],
      [5000, 5000],
      [4000, 5000],
    ] as const;
    const floor = { ...hall, fixtures: [block] };
    // right end at 4000 - 240, upper edge at 4000 - 320
    expect(kinds(floor, lying(4000 - 240 - 900, 4000 - 320 - 300))).toEqual([]);
    expect(kinds(floor, lying(4000 - 240 - 900 + 0.1, 4000 - 320 - 300))).toEqual(["too near a fixture"]);
  });

  it("asks for the side gap beside a rectangle and the end gap behind it, and names both", () => {
    expect(kinds(hall, lying(3000, 2000), lying(3000, 3100))).toEqual([]);
    expect(kinds(hall, lying(3000, 2000), lying(5100, 2000))).toEqual([]);
    expect(checkPlaced(hall, piece, gaps, [lying(6000, 5000), lying(3000, 2000), lying(3000, 3099)])).toEqual(
      [{ kind: "too close", pieces: [1, 2] }],
    );
    expect(kinds(hall, lying(3000, 2000), lying(5099, 2000))).toEqual(["too close"]);
  });

  it("grows rectangles of two directions each by its own gaps", () => {
    // upright one: half 600 + half 500 across = 550; lying one: half 1800 + half 300 along = 1050; together 1600
    expect(kinds(hall, lying(2000, 3000), lying(3600, 3000, 90))).toEqual([]);
    expect(kinds(hall, lying(2000, 3000), lying(3599, 3000, 90))).toEqual(["too close"]);
  });
});

const somewhere = fc.record({
  x: fc.integer({ min: 0, max: 5000 }),
  y: fc.integer({ min: 0, max: 5000 }),
  angle: fc.integer({ min: 0, max: 1799 }).map((tenths) => tenths / 10),
});

describe("checkPlaced beside another geometry library", () => {
  it("agrees on the distance of two turned rectangles", () => {
    fc.assert(
      fc.property(somewhere, somewhere, (a, b) => {
        const one = rectangleOf(lying(a.x, a.y, a.angle), piece);
        const other = rectangleOf(lying(b.x, b.y, b.angle), piece);
        const theirs = meet(flat(one), flat(other)) ? 0 : flat(one).distanceTo(flat(other))[0];
        expect(polygonDistance(one, other)).toBeCloseTo(theirs, 6);
      }),
      { numRuns: 400, seed: 31 },
    );
  });

  it("agrees on which pairs are too close when grown by half the gaps", () => {
    fc.assert(
      fc.property(somewhere, somewhere, (a, b) => {
        const pair = [lying(a.x, a.y, a.angle), lying(b.x, b.y, b.angle)];
        const [one, other] = pair.map((each) => flat(rectangleOf(each, piece, gaps.end / 2, gaps.side / 2)));
        if (one === undefined || other === undefined) throw new Error("two were placed");
        const close = checkPlaced(wide, piece, gaps, pair).some((fault) => fault.kind === "too close");
        // touching to within the tolerance of a thousandth may go either way
        if (meet(one, other) || one.distanceTo(other)[0] > 0.01) expect(close).toBe(meet(one, other));
      }),
      { numRuns: 400, seed: 32 },
    );
  });
});

/** Whether sides cross or one rectangle holds the middle of the other. */
function meet(one: Flatten.Polygon, other: Flatten.Polygon): boolean {
  return one.intersect(other).length > 0 || one.contains(other.box.center) || other.contains(one.box.center);
}

const wide: Floor = {
  ...hall,
  outline: [
    [-9000, -9000],
    [14000, -9000],
    [14000, 14000],
    [-9000, 14000],
  ],
};

function flat(rectangle: ReturnType<typeof rectangleOf>): Flatten.Polygon {
  return new Flatten.Polygon(rectangle.map(([x, y]) => new Flatten.Point(x, y)));
}
