import type { Polygon } from "#kernels/geometry";
import type { Mat } from "./hall.ts";
import type { LaidLines } from "./lay-lines.ts";
import { matExtents, nearestEdge } from "./mat-extents.ts";
import type { PlacedMat } from "./mat-plan-types.ts";
import { type TapeWall, wallAlongLines, wallBefore } from "./tape-walls.ts";
import { dot } from "./vectors.ts";

/** What lines are measured from: a wall that runs along them, else the outermost corner. Real millimetres. */
export type LineReference =
  | { readonly kind: "wall"; readonly wall: number; readonly at: number }
  | { readonly kind: "corner"; readonly corner: number; readonly at: number };

export function lineReference(outline: Polygon, mat: Mat, { away, along, lines }: LaidLines): LineReference {
  const wall = wallAlongLines(outline, away, along, nearestEdge(mat, lines.flat(), away, along));
  if (wall !== undefined) return { kind: "wall", ...wall };
  const places = outline.map((corner) => dot(corner, away));
  const at = Math.min(...places);
  return { kind: "corner", corner: places.indexOf(at), at };
}

/** Where a line's mats begin, along both ways, and the wall they are measured from. Real millimetres. */
export type LineMeasure = {
  /** the near edge of the line, along `away` */
  readonly near: number;
  /** the near edge of its first mat, along `along` */
  readonly start: number;
  readonly wall: TapeWall;
};

/** Throws for a line without a mat and for one that comes to no wall, which no plan on a floor has. */
export function measureLine(
  outline: Polygon,
  mat: Mat,
  { away, along }: Pick<LaidLines, "away" | "along">,
  mats: readonly PlacedMat[],
): LineMeasure {
  const [first] = mats;
  if (first === undefined) throw new RangeError("a line without a mat");
  const { long, deep } = matExtents(mat, first, along);
  const near = dot(first.centre, away) - deep / 2;
  const start = dot(first.centre, along) - long / 2;
  // half a millimetre inside the mats, so that an edge that lies on a wall is not lost between two walls
  const wall = wallBefore(outline, away, along, near + 0.5, start);
  if (wall === undefined) throw new RangeError(`a line that comes to no wall: ${near}, ${start}`);
  return { near, start, wall };
}
