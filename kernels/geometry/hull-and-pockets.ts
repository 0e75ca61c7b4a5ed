import type { Point, Polygon } from "./point.ts";
import { turn } from "./segment-distance.ts";
import { anticlockwise, area } from "./signed-area.ts";

export type HullAndPockets = {
  /** the convex hull, anticlockwise, without corners along a side */
  readonly hull: Polygon;
  /** the polygons that lie in the hull but outside the outline, one behind each side of the hull at most */
  readonly pockets: readonly Polygon[];
};

/** What is outside a simple outline: beyond its convex hull, or in a pocket between hull and outline. */
export function hullAndPockets(outline: Polygon): HullAndPockets {
  const corners = withoutRepeats(anticlockwise(outline));
  const indices = hullIndices(corners);
  const pockets = indices.flatMap((from, place) => {
    const to = indices[(place + 1) % indices.length] ?? from;
    const left = pocket(corners, from, to);
    return area(left) > 0 ? [left] : [];
  });
  return { hull: indices.map((index) => at(corners, index)), pockets };
}

function withoutRepeats(polygon: Polygon): Polygon {
  return polygon.filter((corner, index) => {
    const before = polygon.at(index - 1);
    return before === undefined || before[0] !== corner[0] || before[1] !== corner[1];
  });
}

/** Indices of the corners on the hull, anticlockwise: the lower half from the left, then the upper half. */
function hullIndices(corners: Polygon): readonly number[] {
  const order = corners.map((_, index) => index).sort((i, j) => compare(at(corners, i), at(corners, j)));
  const lower = halfHull(corners, order);
  const upper = halfHull(corners, order.toReversed());
  return [...lower.slice(0, -1), ...upper.slice(0, -1)];
}

function compare(a: Point, b: Point): number {
  return a[0] - b[0] || a[1] - b[1];
}

/** Keeps left turns only. */
function halfHull(corners: Polygon, order: readonly number[]): readonly number[] {
  const kept: number[] = [];
  for (const index of order) {
    while (kept.length >= 2 && !turnsLeft(corners, kept.at(-2), kept.at(-1), index)) kept.pop();
    kept.push(index);
  }
  return kept;
}

function turnsLeft(corners: Polygon, a: number | undefined, b: number | undefined, c: number): boolean {
  return turn(at(corners, a), at(corners, b), at(corners, c)) > 0;
}

function at(corners: Polygon, index: number | undefined): Point {
  const corner = corners[index ?? -1];
  if (corner === undefined) throw new RangeError(`no corner ${index}`);
  return corner;
}

/** The outline from one hull corner to the next: with the hull side it bounds what the outline leaves out. */
function pocket(corners: Polygon, from: number, to: number): Polygon {
  return from <= to ? corners.slice(from, to + 1) : [...corners.slice(from), ...corners.slice(0, to + 1)];
}
