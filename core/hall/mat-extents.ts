import { type Point, rotateAboutOrigin } from "#kernels/geometry";
import type { Mat } from "./hall.ts";
import type { PlacedMat } from "./mat-plan-types.ts";
import { dot } from "./vectors.ts";

/** How far a mat that lies along or across a line reaches along it and square to it, in millimetres. */
export function matExtents(
  mat: Mat,
  placed: PlacedMat,
  along: Point,
): { readonly long: number; readonly deep: number } {
  const lengthwise = Math.abs(dot(rotateAboutOrigin([1, 0], placed.angle), along)) > 0.5;
  return lengthwise ? { long: mat.length, deep: mat.width } : { long: mat.width, deep: mat.length };
}

/** The edge nearest where `away` begins of all the mats, in millimetres along it; infinite for no mats. */
export function nearestEdge(mat: Mat, mats: readonly PlacedMat[], away: Point, along: Point): number {
  return mats.reduce(
    (nearest, placed) =>
      Math.min(nearest, dot(placed.centre, away) - matExtents(mat, placed, along).deep / 2),
    Infinity,
  );
}
