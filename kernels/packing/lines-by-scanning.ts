import {
  type Bounds,
  boundsOf,
  containsPoint,
  edgesOf,
  type Point,
  type Polygon,
  rotatePolygon,
  segmentDistance,
} from "#kernels/geometry";
import type { Floor, Gaps, Piece } from "./packing-types.ts";

/**
 * The plain way to the same question, kept as a witness: every line offset that is a whole number of steps
 * (millimetres) from the low edge of the floor, and in each line every whole step from the left. Exact on
 * upright floors of whole steps without a wall gap; elsewhere it can only find less than there is.
 */
export function linesByScanning(
  floor: Floor,
  piece: Piece,
  gaps: Gaps,
  axes: readonly number[],
  step = 1,
): number {
  let best = 0;
  for (const axis of axes)
    for (const direction of [axis, axis + 90]) {
      const shapes = shapesOf(floor, gaps.wall, -direction);
      best = Math.max(best, scanned(shapes, [piece.length, gaps.end], [piece.width, gaps.side], step));
      best = Math.max(best, scanned(shapes, [piece.width, gaps.side], [piece.length, gaps.end], step));
    }
  return best;
}

/** The outline is a shape that is solid outside. */
type Shape = {
  readonly polygon: Polygon;
  readonly edges: readonly (readonly [Point, Point])[];
  readonly solidInside: boolean;
  readonly distance: number;
};

function shapesOf(floor: Floor, wall: number, degrees: number): readonly Shape[] {
  return [
    shape(floor.outline, false, wall),
    ...floor.fixtures.map((fixture) => shape(fixture, true, wall)),
    ...floor.keepClear.map((zone) => shape(zone, true, 0)),
  ];

  function shape(original: Polygon, solidInside: boolean, distance: number): Shape {
    const polygon = rotatePolygon(original, degrees);
    return { polygon, edges: edgesOf(polygon), solidInside, distance };
  }
}

type Sized = readonly [size: number, gap: number];

/** best[i]: the most with every line at or below offset i; a line at i adds to what lies a pitch below. */
function scanned(shapes: readonly Shape[], along: Sized, across: Sized, step: number): number {
  const { left, right, bottom, top } = boundsOf(shapes[0]?.polygon ?? []);
  const pitch = Math.ceil((across[0] + across[1]) / step - 1e-9);
  const best: number[] = [];
  for (let i = 0; bottom + i * step + across[0] <= top + HAIR; i++) {
    const y = bottom + i * step;
    const here = inLine(shapes, { left, right, bottom: y, top: y + across[0] }, along, step);
    best.push(Math.max(best[i - 1] ?? 0, here + (best[i - pitch] ?? 0)));
  }
  return best.at(-1) ?? 0;
}

/** From the left; a place that is not allowed is left by as much as is surely needed, at least one step. */
function inLine(shapes: readonly Shape[], row: Bounds, [size, gap]: Sized, step: number): number {
  const last = Math.floor((row.right - row.left - size) / step + HAIR);
  const pitch = Math.ceil((size + gap) / step - 1e-9);
  let count = 0;
  for (let i = 0; i <= last; ) {
    const left = row.left + i * step;
    const short = missing(shapes, { left, right: left + size, bottom: row.bottom, top: row.top });
    if (short <= 0) count++;
    i += short <= 0 ? pitch : Math.max(1, Math.floor(short / step));
  }
  return count;
}

/** What turning may cost: touching by less is not overlapping. */
const HAIR = 1e-6;

/** How far right the rectangle must move at least; 0 when it may stay. */
function missing(shapes: readonly Shape[], box: Bounds): number {
  return shapes.reduce((most, shape) => Math.max(most, missingOne(shape, box)), 0);
}

/** A solid point within the rectangle must be left behind; a wall too near must get further away. */
function missingOne({ polygon, edges, solidInside, distance }: Shape, box: Bounds): number {
  const smaller = {
    left: box.left + HAIR,
    right: box.right - HAIR,
    bottom: box.bottom + HAIR,
    top: box.top - HAIR,
  };
  let short = 0;
  for (const corner of cornersOf(smaller))
    if (containsPoint(polygon, corner) === solidInside) short = Math.max(short, corner[0] - box.left);
  for (const [a, b] of edges) {
    if (gapToBox(a, b, box) > distance) continue;
    if (distanceToBox(a, b, smaller) === 0) short = Math.max(short, distance, HAIR);
    else short = Math.max(short, distance - 2 * HAIR - distanceToBox(a, b, box));
  }
  return short;
}

function cornersOf({ left, right, bottom, top }: Bounds): readonly Point[] {
  return [
    [left, bottom],
    [right, bottom],
    [right, top],
    [left, top],
  ];
}

/** Not more than the distance of the segment: that of its own box. */
function gapToBox(a: Point, b: Point, box: Bounds): number {
  const across = Math.max(0, Math.min(a[0], b[0]) - box.right, box.left - Math.max(a[0], b[0]));
  const up = Math.max(0, Math.min(a[1], b[1]) - box.top, box.bottom - Math.max(a[1], b[1]));
  return Math.hypot(across, up);
}

function distanceToBox(a: Point, b: Point, box: Bounds): number {
  if (a[0] > box.left && a[0] < box.right && a[1] > box.bottom && a[1] < box.top) return 0;
  const corners = cornersOf(box);
  return corners.reduce((least, corner, index) => {
    return Math.min(least, segmentDistance(a, b, corner, corners[(index + 1) % 4] ?? corner));
  }, Infinity);
}
