import { boundsOf } from "./bounds-of.ts";
import { convexParts } from "./convex-parts.ts";
import type { Point, Polygon } from "./point.ts";
import { turn } from "./segment-distance.ts";
import { anticlockwise } from "./signed-area.ts";

/**
 * Convex polygons that together cover all that is outside a simple outline, as far out as three times its
 * diagonal: one long slab behind each side of the convex hull, and the parts of each pocket between hull and
 * outline.
 */
export function outsideParts(outline: Polygon): readonly Polygon[] {
  const corners = withoutRepeats(anticlockwise(outline));
  const hull = hullIndices(corners);
  const { left, right, top, bottom } = boundsOf(corners);
  const reach = 3 * Math.hypot(right - left, top - bottom);
  return hull.flatMap((from, at) => {
    const to = hull[(at + 1) % hull.length] ?? from;
    return [slabBehind(corners, from, to, reach), ...convexParts(pocket(corners, from, to))];
  });
}

function withoutRepeats(polygon: Polygon): Polygon {
  return polygon.filter((corner, index) => {
    const before = polygon.at(index - 1);
    return before === undefined || before[0] !== corner[0] || before[1] !== corner[1];
  });
}

/** Indices of the corners on the convex hull, anticlockwise, corners along a side of it left out. */
function hullIndices(corners: Polygon): readonly number[] {
  const order = corners.map((_, index) => index).sort((i, j) => compare(corners, i, j));
  const lower = halfHull(corners, order);
  const upper = halfHull(corners, order.toReversed());
  return [...lower.slice(0, -1), ...upper.slice(0, -1)];
}

function compare(corners: Polygon, i: number, j: number): number {
  const [a, b] = [at(corners, i), at(corners, j)];
  return a[0] - b[0] || a[1] - b[1];
}

function halfHull(corners: Polygon, order: readonly number[]): readonly number[] {
  const kept: number[] = [];
  for (const index of order) {
    while (
      kept.length >= 2 &&
      turn(at(corners, kept.at(-2)), at(corners, kept.at(-1)), at(corners, index)) <= 0
    )
      kept.pop();
    kept.push(index);
  }
  return kept;
}

function at(corners: Polygon, index: number | undefined): Point {
  const corner = corners[index ?? -1];
  if (corner === undefined) throw new RangeError(`no corner ${index}`);
  return corner;
}

function slabBehind(corners: Polygon, from: number, to: number, reach: number): Polygon {
  const [a, b] = [at(corners, from), at(corners, to)];
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const [ux, uy] = [((b[0] - a[0]) / length) * reach, ((b[1] - a[1]) / length) * reach];
  return [
    [b[0] + ux, b[1] + uy],
    [a[0] - ux, a[1] - uy],
    [a[0] - ux + uy, a[1] - uy - ux],
    [b[0] + ux + uy, b[1] + uy - ux],
  ];
}

/** The outline from one hull corner to the next: with the hull side it bounds what the outline leaves out. */
function pocket(corners: Polygon, from: number, to: number): Polygon {
  return from <= to ? corners.slice(from, to + 1) : [...corners.slice(from), ...corners.slice(0, to + 1)];
}
