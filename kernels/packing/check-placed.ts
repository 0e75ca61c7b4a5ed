import {
  boundsOf,
  type Bounds,
  containsPoint,
  edgeDistance,
  type Point,
  type Polygon,
  polygonDistance,
} from "#kernels/geometry";
import type { Floor, Gaps, Piece, Placed } from "./packing-types.ts";
import { rectangleOf } from "./rectangle-of.ts";

/** What is wrong with a plan, and with which rectangles (by index). */
export type Fault = {
  readonly kind: "outside" | "too near a wall" | "too near a fixture" | "in a clear zone" | "too close";
  readonly pieces: readonly number[];
};

/** Millimetres by which a rule may be missed: what turning and adding cost, a hundred times over. */
const TOLERANCE = 1e-3;

/**
 * Everything wrong with the placed rectangles; an empty list says the plan is allowed. Shares nothing with
 * the search: distances are taken corner by wall, and two rectangles are told apart by a line between them.
 */
export function checkPlaced(
  floor: Floor,
  piece: Piece,
  gaps: Gaps,
  placed: readonly Placed[],
): readonly Fault[] {
  const rectangles = placed.map((each) => rectangleOf(each, piece));
  const alone = rectangles.flatMap((rectangle, index) =>
    faultsOfOne(floor, gaps, rectangle).map((kind) => ({ kind, pieces: [index] })),
  );
  return [...alone, ...pairsTooClose(piece, gaps, placed)];
}

function faultsOfOne(floor: Floor, gaps: Gaps, rectangle: Polygon): readonly Fault["kind"][] {
  const faults: Fault["kind"][] = [];
  const near = gaps.wall - TOLERANCE;
  if (!liesInside(floor.outline, rectangle)) faults.push("outside");
  else if (edgeDistance(floor.outline, rectangle) < near) faults.push("too near a wall");
  if (floor.fixtures.some((fixture) => isNear(fixture, rectangle, near))) faults.push("too near a fixture");
  if (floor.keepClear.some((zone) => overlaps(zone, rectangle))) faults.push("in a clear zone");
  return faults;
}

/** Whether the rectangle, a hair smaller, has its corners inside and no wall running through it. */
function liesInside(outline: Polygon, rectangle: Polygon): boolean {
  const smaller = shrunk(rectangle);
  return (
    smaller.every((corner) => containsPoint(outline, corner)) &&
    edgeDistance(outline, smaller) > 0 &&
    !cornerWithin(outline, smaller)
  );
}

function cornerWithin(polygon: Polygon, rectangle: Polygon): boolean {
  return polygon.some((corner) => containsPoint(rectangle, corner));
}

function isNear(fixture: Polygon, rectangle: Polygon, near: number): boolean {
  return near > 0
    ? apartInBounds(fixture, rectangle, near) && polygonDistance(fixture, rectangle) < near
    : overlaps(fixture, rectangle);
}

/** Whether the insides meet by more than the tolerance. */
function overlaps(zone: Polygon, rectangle: Polygon): boolean {
  return apartInBounds(zone, rectangle, 0) && polygonDistance(zone, shrunk(rectangle)) === 0;
}

/** False when the boxes alone show that the two are further apart. */
function apartInBounds(one: Polygon, other: Polygon, near: number): boolean {
  return gapOfBounds(boundsOf(one), boundsOf(other)) <= near;
}

function gapOfBounds(a: Bounds, b: Bounds): number {
  return Math.max(a.left - b.right, b.left - a.right, a.bottom - b.top, b.bottom - a.top);
}

function shrunk(rectangle: Polygon): Polygon {
  const [x, y] = centreOf(rectangle);
  return rectangle.map(([cx, cy]) => {
    const share = 1 - TOLERANCE / Math.max(TOLERANCE, Math.hypot(cx - x, cy - y));
    return [x + (cx - x) * share, y + (cy - y) * share] as const;
  });
}

function centreOf(rectangle: Polygon): Point {
  const { left, right, bottom, top } = boundsOf(rectangle);
  return [(left + right) / 2, (bottom + top) / 2];
}

function pairsTooClose(piece: Piece, gaps: Gaps, placed: readonly Placed[]): readonly Fault[] {
  const grown = placed.map((each) => rectangleOf(each, piece, gaps.end / 2, gaps.side / 2));
  const boxes = grown.map(boundsOf);
  const faults: Fault[] = [];
  for (const [i, one] of grown.entries())
    for (let j = i + 1; j < grown.length; j++) {
      const [a, b, other] = [boxes[i], boxes[j], grown[j]];
      if (a === undefined || b === undefined || other === undefined) continue;
      if (gapOfBounds(a, b) < -TOLERANCE && !separable(one, other))
        faults.push({ kind: "too close", pieces: [i, j] });
    }
  return faults;
}

/** Two rectangles are apart when, seen along a side of either, one lies wholly past the other. */
function separable(one: Polygon, other: Polygon): boolean {
  return [...sidesOf(one), ...sidesOf(other)].some((side) => gapAlong(side, one, other) >= -TOLERANCE);
}

/** Unit vectors of the two directions of the sides. */
function sidesOf(rectangle: Polygon): readonly Point[] {
  const [a, b, c] = rectangle;
  if (a === undefined || b === undefined || c === undefined) return [];
  return [unit(a, b), unit(b, c)];
}

function unit(from: Point, to: Point): Point {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  return [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
}

function gapAlong(direction: Point, one: Polygon, other: Polygon): number {
  const [a, b] = [shadow(direction, one), shadow(direction, other)];
  return Math.max(a[0] - b[1], b[0] - a[1]);
}

function shadow([dx, dy]: Point, polygon: Polygon): readonly [from: number, to: number] {
  const along = polygon.map(([x, y]) => x * dx + y * dy);
  return [Math.min(...along), Math.max(...along)];
}
