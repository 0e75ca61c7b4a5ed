import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  area,
  containsPoint,
  convexParts,
  crossesItself,
  hullAndPockets,
  type Polygon,
  polygonDistance,
  quarterTurnAngle,
  rotateAboutOrigin,
  rotatePolygon,
  segmentDistance,
  signedArea,
  wallDirections,
} from "./index.ts";

const room: Polygon = [
  [0, 0],
  [10, 0],
  [10, 5],
  [4, 5],
  [4, 12],
  [0, 12],
];

describe("area", () => {
  it("is positive anticlockwise and negative clockwise: 10 × 5 + 4 × 7 = 78", () => {
    expect(signedArea(room)).toBe(78);
    expect(signedArea(room.toReversed())).toBe(-78);
    expect(area([])).toBe(0);
  });
});

describe("containsPoint", () => {
  it("tells the wing from the missing corner", () => {
    expect(containsPoint(room, [2, 11])).toBe(true);
    expect(containsPoint(room, [9, 11])).toBe(false);
    expect(containsPoint(room, [-1, 5])).toBe(false);
  });
});

describe("crossesItself", () => {
  it("finds nothing wrong with an L, either way round, nor with a corner along a wall", () => {
    expect(crossesItself(room)).toBeNull();
    expect(crossesItself(room.toReversed())).toBeNull();
    expect(crossesItself([[5, 0], ...room.slice(1), [0, 0]])).toBeNull();
  });

  it("names the two walls of a bow tie", () => {
    const bowTie: Polygon = [
      [0, 0],
      [4, 4],
      [4, 0],
      [0, 4],
    ];
    expect(crossesItself(bowTie)).toEqual([0, 2]);
  });

  it("counts a wall that runs back over its neighbour, and a corner that stands on another wall", () => {
    const spike: Polygon = [
      [0, 0],
      [4, 0],
      [2, 0],
      [2, 3],
    ];
    const pinched: Polygon = [
      [0, 0],
      [6, 0],
      [6, 4],
      [3, 0],
      [0, 4],
    ];
    expect(crossesItself(spike)).toEqual([0, 1]);
    expect(crossesItself(pinched)).toEqual([0, 2]);
  });
});

describe("distances", () => {
  it("are 0 for segments that cross, and the nearest ends otherwise", () => {
    expect(segmentDistance([0, 0], [4, 4], [0, 4], [4, 0])).toBe(0);
    // from (4, 4) to (7, 8): 3 across, 4 up
    expect(segmentDistance([0, 0], [4, 4], [7, 8], [9, 20])).toBe(5);
  });

  it("are 0 between a polygon and one inside it", () => {
    const inner: Polygon = [
      [1, 1],
      [2, 1],
      [2, 2],
    ];
    expect(polygonDistance(room, inner)).toBe(0);
    expect(polygonDistance(inner, rotatePolygon(inner, 180))).toBeCloseTo(Math.hypot(2, 2), 12);
  });
});

describe("rotateAboutOrigin", () => {
  it("keeps whole millimetres whole for quarter turns", () => {
    expect(rotateAboutOrigin([3, 5], 90)).toEqual([-5, 3]);
    expect(rotateAboutOrigin([3, 5], -90)).toEqual([5, -3]);
    expect(rotateAboutOrigin([3, 5], 180)).toEqual([-3, -5]);
  });
});

describe("wallDirections", () => {
  it("takes a wall and its perpendicular as one, the longest first", () => {
    // 45 degrees: 2 × 2.83; upright: 8 + 6 + 6 and more
    const bay: Polygon = [
      [0, 0],
      [8, 0],
      [8, 6],
      [6, 8],
      [2, 8],
      [0, 6],
    ];
    expect(wallDirections(bay)).toEqual([0, 45]);
  });

  it("takes directions within a thousandth of a degree as one, also across 0 and 90", () => {
    // 0.1 mm in 10 000 mm is 0.00057 degrees
    const askew: Polygon = [
      [0, 0],
      [10_000, 0.1],
      [10_000, 8000],
      [0, 8000],
    ];
    expect(wallDirections(askew)).toHaveLength(1);
    expect(quarterTurnAngle(-30)).toBe(60);
    expect(quarterTurnAngle(90)).toBe(0);
  });
});

/** Corners at sorted angles round a middle, at random distances: simple, seldom convex. */
const stars = fc.array(fc.integer({ min: 1000, max: 9000 }), { minLength: 3, maxLength: 24 }).map(
  (radii): Polygon =>
    radii.map((radius, index) => {
      const turn = (2 * Math.PI * index) / radii.length;
      return [Math.round(radius * Math.cos(turn)), Math.round(radius * Math.sin(turn))] as const;
    }),
);

describe("cutting into convex parts", () => {
  it("keeps the area, and with the pockets fills the hull", () => {
    fc.assert(
      fc.property(stars, (star) => {
        const parts = convexParts(star).reduce((sum, part) => sum + signedArea(part), 0);
        const { hull, pockets } = hullAndPockets(star);
        const left = pockets.reduce((sum, pocket) => sum + area(pocket), 0);
        expect(parts).toBeCloseTo(area(star), 3);
        expect(left + area(star)).toBeCloseTo(signedArea(hull), 3);
      }),
      { numRuns: 500, seed: 11 },
    );
  });

  it("gives parts that never turn right", () => {
    fc.assert(
      fc.property(stars, (star) => {
        for (const part of [...convexParts(star), hullAndPockets(star).hull])
          for (const [index, b] of part.entries()) {
            const [a, c] = [part.at(index - 1) ?? b, part[(index + 1) % part.length] ?? b];
            expect((b[0] - a[0]) * (c[1] - b[1]) - (b[1] - a[1]) * (c[0] - b[0])).toBeGreaterThanOrEqual(0);
          }
      }),
      { numRuns: 200, seed: 12 },
    );
  });
});
