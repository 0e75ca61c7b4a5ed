import { type Point, type Polygon, signedArea } from "#kernels/geometry";
import { cornerName, wallName } from "./corner-names.ts";
import { cornerAt } from "./floor-corners.ts";
import { type FloorDraft, outlineOf, type ShapeRef, withOutline } from "./floor-draft.ts";
import { snapLength } from "./floor-snap.ts";
import { added, cross, direction, dot, scaled, subtracted } from "./vectors.ts";

/** A wall as the editor shows it: from its corner to the next. Millimetres and degrees. */
export type Wall = {
  /** "A–B" */
  readonly name: string;
  readonly from: Point;
  readonly to: Point;
  readonly length: number;
};

export type Corner = {
  /** "A" */
  readonly name: string;
  readonly at: Point;
  /** inside the floor: 90 in the corner of a plain room, 270 at the inner corner of an L */
  readonly innerAngle: number;
};

export function wallsOf(outline: Polygon): readonly Wall[] {
  return outline.map((from, index) => {
    const to = cornerAt(outline, (index + 1) % outline.length);
    return { name: wallName(outline, index), from, to, length: Math.hypot(to[0] - from[0], to[1] - from[1]) };
  });
}

export function cornersOf(outline: Polygon): readonly Corner[] {
  const turning = signedArea(outline) < 0 ? -1 : 1;
  return outline.map((at, index) => {
    const before = cornerAt(outline, (index + outline.length - 1) % outline.length);
    const after = cornerAt(outline, (index + 1) % outline.length);
    const [back, on] = [subtracted(before, at), subtracted(after, at)];
    const degrees = (Math.atan2(turning * cross(on, back), dot(on, back)) * 180) / Math.PI;
    return { name: cornerName(index), at, innerAngle: (degrees + 360) % 360 };
  });
}

/** One long, square to the wall, out of the floor. */
export function outwardOf(outline: Polygon, wall: number): Point {
  const { from, to } = wallEnds(outline, wall);
  const [x, y] = direction(from, to);
  return signedArea(outline) < 0 ? [0 - y, x] : [y, 0 - x];
}

/**
 * The wall goes out by so many millimetres (in where negative), to the centimetre, its ends sliding along the two
 * walls beside it: right angles stay right. Where a neighbour runs on in the same line, that end goes straight out.
 */
export function moveWall(draft: FloorDraft, shape: ShapeRef, wall: number, outward: number): FloorDraft {
  const outline = outlineOf(draft, shape);
  const count = outline.length;
  const { from, to } = wallEnds(outline, wall);
  const shift = scaled(outwardOf(outline, wall), snapLength(outward));
  const before = cornerAt(outline, (wall + count - 1) % count);
  const after = cornerAt(outline, (wall + 2) % count);
  const along = direction(from, to);
  const moved = outline
    .with(wall, wholePoint(slid(from, shift, along, direction(before, from))))
    .with((wall + 1) % count, wholePoint(slid(to, shift, along, direction(after, to))));
  return withOutline(draft, shape, moved);
}

/** Where the shifted wall meets the line of its neighbour. */
function slid(corner: Point, shift: Point, along: Point, neighbour: Point): Point {
  const across = cross(along, neighbour);
  // under about 1° the meeting point runs away: go straight out
  if (Math.abs(across) < 0.02) return added(corner, shift);
  return added(corner, scaled(neighbour, cross(along, shift) / across));
}

/**
 * Gives the wall a length. Its second corner goes along the wall, and the corners after it go with it, up to the
 * first wall that runs back the other way and stays longer than nothing: that wall takes up the difference, every
 * other wall keeps its length and every angle stays. Where no wall runs back, only the second corner moves.
 *
 * In a room of 8 × 12 m, giving the wall A–B 9 m moves B and C and makes C–D 9 m as well.
 */
export function setWallLength(draft: FloorDraft, shape: ShapeRef, wall: number, length: number): FloorDraft {
  const outline = outlineOf(draft, shape);
  const count = outline.length;
  const { from, to } = wallEnds(outline, wall);
  const along = direction(from, to);
  const longer = length - Math.hypot(to[0] - from[0], to[1] - from[1]);
  const taker = takerOf(outline, wall, along, longer);
  const shift = scaled(along, longer);
  const moved = outline.map((corner, index) => {
    const on = (index + count - wall) % count;
    return on >= 1 && on <= taker ? wholePoint(added(corner, shift)) : corner;
  });
  return withOutline(draft, shape, moved);
}

/** How many walls on from `wall` the one is that takes up the difference; 1 where there is none. */
function takerOf(outline: Polygon, wall: number, along: Point, longer: number): number {
  for (let on = 2; on < outline.length; on++) {
    const { from, to } = wallEnds(outline, (wall + on) % outline.length);
    const way = direction(from, to);
    // within about 0.06°: square enough that no angle is seen to change
    const runsBack = Math.abs(cross(along, way)) < 0.001 && dot(along, way) < 0;
    if (runsBack && Math.hypot(to[0] - from[0], to[1] - from[1]) + longer > 0) return on;
  }
  return 1;
}

function wallEnds(outline: Polygon, wall: number): { readonly from: Point; readonly to: Point } {
  return { from: cornerAt(outline, wall), to: cornerAt(outline, (wall + 1) % outline.length) };
}

function wholePoint([x, y]: Point): Point {
  return [snapLength(x, 1), snapLength(y, 1)];
}
