import type { Point, Polygon } from "#kernels/geometry";
import type { Mat } from "../hall.ts";
import { matExtents } from "../mat-extents.ts";
import type { PlacedMat } from "../mat-plan-types.ts";
import { runsSquare, wallBefore } from "../tape-walls.ts";
import { dot, scaled } from "../vectors.ts";

/** A frame to measure in: each way one long, square to one another. */
export type TapeFrame = { readonly along: Point; readonly away: Point };

/** From a wall, by its index, to the nearest edge of the mat, in real millimetres. */
export type TapeFigure = {
  readonly wall: number;
  readonly figure: number;
  /** which way the figure grows when the mat is moved on along the way it was measured */
  readonly grows: 1 | -1;
  readonly slanting: boolean;
};

/**
 * How far a mat's edge lies from the wall that a tape along `way` comes to: the wall behind the mat, or, where that
 * is at a slant and the one before it is not, the one before it. Along a slanting wall the tape lies along the mat's
 * near edge. Throws for a mat that is not between walls, which no plan on a floor has.
 */
export function measurePlace(
  outline: Polygon,
  mat: Mat,
  placed: PlacedMat,
  way: Point,
  across: Point,
): TapeFigure {
  const { long, deep } = matExtents(mat, placed, way);
  const [middle, level] = [dot(placed.centre, way), dot(placed.centre, across) - deep / 2];
  const behind = met(outline, way, across, level, middle - long / 2, 1);
  if (behind !== undefined && !behind.slanting) return behind;
  const before = met(outline, scaled(way, -1), across, level, -middle - long / 2, -1);
  const found = before !== undefined && !before.slanting ? before : (behind ?? before);
  if (found === undefined) throw new RangeError(`a mat between no walls: ${placed.centre.join(", ")}`);
  return found;
}

/** Half a millimetre into the mat, so that an edge that lies on a wall is not lost between two walls. */
const INSIDE = 0.5;

function met(
  outline: Polygon,
  way: Point,
  across: Point,
  level: number,
  start: number,
  grows: 1 | -1,
): TapeFigure | undefined {
  const found = wallBefore(outline, across, way, level + INSIDE, start);
  if (found === undefined) return undefined;
  const slanting = !runsSquare(outline, found.wall, way);
  const at = slanting ? atLevel(outline, found.wall, way, across, level) : found.at;
  return { wall: found.wall, figure: start - at, grows, slanting };
}

/** Where a wall, run on straight, crosses a level. */
function atLevel(outline: Polygon, wall: number, way: Point, across: Point, level: number): number {
  const [from, to] = [outline[wall], outline[(wall + 1) % outline.length]];
  if (from === undefined || to === undefined) throw new RangeError(`no wall ${wall}`);
  const [low, high] = [dot(from, across) - level, dot(to, across) - level];
  return dot(from, way) + (low / (low - high)) * (dot(to, way) - dot(from, way));
}
