import type { Point, Polygon } from "#kernels/geometry";
import type { Mat } from "../hall.ts";
import { matExtents, nearestEdge } from "../mat-extents.ts";
import type { PlacedMat } from "../mat-plan-types.ts";
import { runsSquare, wallBefore } from "../tape-walls.ts";
import { dot, scaled } from "../vectors.ts";

/** A way to measure, one long, what is square to it, and where along it a string would lie: at the nearest edge of all mats. */
export type TapeWay = {
  readonly way: Point;
  readonly across: Point;
  readonly string: number;
  readonly name: "string 1" | "string 2";
};

/** Two ways square to one another: along the rows, and away from the front. */
export type TapeFrame = { readonly along: TapeWay; readonly away: TapeWay };

/** From a wall, by its index, or from the string, to the nearest edge of the mat, in real millimetres. */
export type TapeFigure = {
  readonly from: number | TapeWay["name"];
  readonly figure: number;
  /** which way the figure grows when the mat is moved on along the way */
  readonly grows: 1 | -1;
};

/** The frame for mats along an axis: `along` and `away` each one long and square to one another. */
export function tapeFrame(mat: Mat, mats: readonly PlacedMat[], along: Point, away: Point): TapeFrame {
  return {
    along: { way: along, across: away, string: nearestEdge(mat, mats, along, away), name: "string 2" },
    away: { way: away, across: along, string: nearestEdge(mat, mats, away, along), name: "string 1" },
  };
}

/**
 * How far a mat's edge lies from the wall that a tape along `way` comes to: the wall behind the mat, or the one before
 * it, whichever is square to the way; where both stand at a slant, from the string.
 */
export function measurePlace(
  outline: Polygon,
  mat: Mat,
  placed: PlacedMat,
  { way, across, string, name }: TapeWay,
): TapeFigure {
  const { long, deep } = matExtents(mat, placed, way);
  const [middle, level] = [dot(placed.centre, way), dot(placed.centre, across) - deep / 2];
  return (
    met(outline, way, across, level, middle - long / 2, 1) ??
    met(outline, scaled(way, -1), across, level, -middle - long / 2, -1) ?? {
      from: name,
      figure: middle - long / 2 - string,
      grows: 1,
    }
  );
}

/** Half a millimetre into the mat, so that an edge that lies on a wall is not lost between two walls. */
const INSIDE = 0.5;

/** Undefined where the tape comes to a wall at a slant, or to none. */
function met(
  outline: Polygon,
  way: Point,
  across: Point,
  level: number,
  start: number,
  grows: 1 | -1,
): TapeFigure | undefined {
  const found = wallBefore(outline, across, way, level + INSIDE, start);
  if (found === undefined || !runsSquare(outline, found.wall, way)) return undefined;
  return { from: found.wall, figure: start - found.at, grows };
}
