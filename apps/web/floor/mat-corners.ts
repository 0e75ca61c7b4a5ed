// Example: a mat 1.80 m × 0.60 m with its centre at 2 m, 3 m and angle 90 stands from (1.70, 2.10) to (2.30, 3.90).
import { type FloorDraft, hallFrame, type Mat, type PlacedMat } from "#core/hall";
import type { Point, Polygon } from "#kernels/geometry";

/** Unit vector of a direction in degrees from +x. */
export function direction(degrees: number): Point {
  const turned = (degrees * Math.PI) / 180;
  return [Math.cos(turned), Math.sin(turned)];
}

/** The four corners of a mat in millimetres; the first two are the end that `angle` points at. */
export function matCorners(mat: Mat, placed: PlacedMat): Polygon {
  const [ux, uy] = direction(placed.angle);
  const half = [mat.length / 2, mat.width / 2] as const;
  const corner = (ahead: number, left: number): Point => [
    placed.centre[0] + ux * half[0] * ahead - uy * half[1] * left,
    placed.centre[1] + uy * half[0] * ahead + ux * half[1] * left,
  ];
  return [corner(1, 1), corner(1, -1), corner(-1, -1), corner(-1, 1)];
}

/**
 * 1 where the heads lie at the end that the mats' angle points at, −1 where at the other.
 *
 * Heads are drawn towards the front of the hall, so that everybody looks that way when sitting up on the mat; mats
 * that lie from left to right have them at the left.
 */
export function headEnd(mats: readonly PlacedMat[], floor: Pick<FloorDraft, "outline" | "teacher">): 1 | -1 {
  const first = mats[0];
  if (first === undefined) return 1;
  const [ux, uy] = direction(first.angle);
  const { front, right } = hallFrame(floor);
  const ahead = ux * front[0] + uy * front[1];
  // 1e-3 is a tenth of a degree: nearer to square than anybody can see
  const way = Math.abs(ahead) > 1e-3 ? ahead : -(ux * right[0] + uy * right[1]);
  return way >= 0 ? 1 : -1;
}
