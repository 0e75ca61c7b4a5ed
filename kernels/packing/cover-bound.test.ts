import * as fc from "fast-check";
import { expect, it } from "vitest";
import { type Point, type Polygon, rotatePolygon } from "#kernels/geometry";
import { branchCover } from "./branch-cover.ts";
import { type Cover, coverRounds, startCover } from "./cover-bound.ts";
import { coveredBy, leastOf } from "./cover-sums.ts";
import { latticePoints } from "./lattice-points.ts";
import { narrowCover } from "./narrow-cover.ts";
import { type MostSpace, mostSpace } from "./most-space.ts";
import { surroundingsOf } from "./obstacles.ts";
import { type Points, pointsOf } from "./points-of.ts";
import { reachesOf, slabsOf } from "./reach-of.ts";

const piece = { length: 900, width: 400 };
const gaps = { side: 100, end: 60, wall: 0 };

/** Rows of rectangles, some turned: the plan is known before the floor is drawn round it. */
const plans = fc.array(
  fc.record({ turned: fc.array(fc.boolean(), { minLength: 1, maxLength: 4 }), shift: fc.nat(700) }),
  { minLength: 2, maxLength: 4 },
);

it("is never below a plan round which the floor was drawn as tightly as a hull can be", () => {
  let spare = 0;
  fc.assert(
    fc.property(plans, fc.integer({ min: 0, max: 89 }), (rows, axis) => {
      const { corners, known } = cornersOf(rows);
      const outline = rotatePolygon(hullOf(corners), axis);
      for (const points of [latticePoints, pointsOf]) {
        const cover = covered(outline, axis, (space) => points(space, 50));
        expect(Math.floor(cover.bound + 1e-9)).toBeGreaterThanOrEqual(known);
        expect(cover.floor).toBeLessThanOrEqual(cover.bound);
        // the weights that are kept do prove what is claimed: no block is lighter than one
        expect(leastOf(coveredBy(cover, cover.bestWeights, cover.overshot))).toBeGreaterThan(1 - 1e-9);
        spare += cover.bound - known;
      }
    }),
    { numRuns: 40, seed: 33 },
  );
  // a bound that says next to nothing would pass the above: on average there are four more in 80 bounds at most
  expect(spare / 80).toBeLessThan(4);
});

it("is never brought below a known plan by leaving places out and parting what is left", () => {
  let [left, parted] = [0, 0];
  fc.assert(
    fc.property(plans, fc.integer({ min: 0, max: 89 }), (rows, axis) => {
      const { corners, known } = cornersOf(rows);
      const outline = rotatePolygon(hullOf(corners), axis);
      const whole = covered(outline, axis, (space) => latticePoints(space, 40));
      // as if the bound had nearly come down to the known plan: all is left out that it cannot use then
      const narrowed = narrowCover(whole, known);
      if (narrowed !== null) left++;
      const parts = branchCover(narrowed ?? whole, known).flatMap((part) => {
        coverRounds(part, 120);
        const finer = branchCover(part, known);
        return finer.length > 0 ? finer : [part];
      });
      if (parts.length > 0) parted++;
      for (const part of parts) coverRounds(part, 120);
      // one part at least still holds the plan
      if (parts.length > 0)
        expect(Math.max(...parts.map((part) => Math.floor(part.bound + 1e-9)))).toBeGreaterThanOrEqual(known);
    }),
    { numRuns: 25, seed: 34 },
  );
  expect(left).toBeGreaterThan(0);
  expect(parted).toBeGreaterThan(15);
});

function spaceOf(outline: Polygon, axis: number): MostSpace {
  return mostSpace(piece, gaps, surroundingsOf({ outline, fixtures: [], keepClear: [] }, gaps.wall), axis);
}

function covered(outline: Polygon, axis: number, points: (space: MostSpace) => Points): Cover {
  const space = spaceOf(outline, axis);
  const { xs, ys } = points(space);
  const cover = startCover(
    reachesOf(
      space,
      xs,
      ys,
      space.turns.map((turn) => slabsOf(turn, ys, 20)),
    ),
  );
  coverRounds(cover, 240);
  return cover;
}

function cornersOf(rows: readonly { readonly turned: readonly boolean[]; readonly shift: number }[]): {
  readonly corners: readonly Point[];
  readonly known: number;
} {
  const corners: Point[] = [];
  let [y, known] = [0, 0];
  for (const { turned, shift } of rows) {
    let x = shift;
    for (const across of turned) {
      const [wide, high] = across ? [400, 900] : [900, 400];
      corners.push([x, y], [x + wide, y], [x + wide, y + high], [x, y + high]);
      // gaps between unlike neighbours are the mean of 100 and 60, between like ones no more than 100
      x += wide + 100;
      known++;
    }
    y += 900 + 100;
  }
  return { corners, known };
}

function hullOf(points: readonly Point[]): Polygon {
  const sorted = points.toSorted((a, b) => a[0] - b[0] || a[1] - b[1]);
  return [...halfHull(sorted), ...halfHull(sorted.toReversed())];
}

function halfHull(points: readonly Point[]): readonly Point[] {
  const chain: Point[] = [];
  for (const next of points) {
    while (chain.length > 1 && !turnsLeft(chain.at(-2)!, chain.at(-1)!, next)) chain.pop();
    chain.push(next);
  }
  return chain.slice(0, -1);
}

function turnsLeft([ax, ay]: Point, [bx, by]: Point, [cx, cy]: Point): boolean {
  return (bx - ax) * (cy - ay) - (by - ay) * (cx - ax) > 0;
}
