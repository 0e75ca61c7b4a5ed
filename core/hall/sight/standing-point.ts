import { type Point, rotateAboutOrigin } from "#kernels/geometry";
import type { Mat } from "../hall.ts";
import type { HallFrame } from "../hall-frame.ts";
import type { PlacedMat } from "../mat-plan-types.ts";
import { added, dot, scaled, subtracted } from "../vectors.ts";

/** Which end of a mat the head lies at: that nearer to the teacher, or, feet to the teacher, the other. */
export type Heads = "near" | "far";

/** Ends as near as a thousandth of a millimetre are equally near. */
const EQUALLY_NEAR = 1e-3;

/**
 * Where somebody stands on a mat: the middle of the short side at its head end. Of two ends equally far from the
 * teacher it is the one further left, seen facing the front.
 */
export function standingPoint(
  mat: Mat,
  placed: PlacedMat,
  teacher: Point,
  { right }: HallFrame,
  heads: Heads,
): Point {
  const half = rotateAboutOrigin([mat.length / 2, 0], placed.angle);
  const [one, other] = [added(placed.centre, half), subtracted(placed.centre, half)];
  const nearer = (distance(one, teacher) - distance(other, teacher)) * (heads === "near" ? 1 : -1);
  if (Math.abs(nearer) > EQUALLY_NEAR) return nearer < 0 ? one : other;
  return dot(one, right) < dot(other, right) ? one : other;
}

/** One long, along a side of the mat: the one of the four that points most towards `wished`; its length first. */
export function sideTowards(placed: PlacedMat, wished: Point): { way: Point; along: "length" | "width" } {
  const length = rotateAboutOrigin([1, 0], placed.angle);
  const width: Point = [0 - length[1], length[0]];
  const along = Math.abs(dot(length, wished)) >= Math.abs(dot(width, wished)) - 1e-9 ? "length" : "width";
  const side = along === "length" ? length : width;
  return { way: dot(side, wished) < 0 ? scaled(side, -1) : side, along };
}

function distance(a: Point, b: Point): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1]);
}
