import type { Polygon } from "#kernels/geometry";
import { cornerAt } from "./floor-corners.ts";
import { outwardOf } from "./floor-walls.ts";
import { snapPoint } from "./floor-snap.ts";
import { added, scaled } from "./vectors.ts";

/** 2 to 2.5 m in front of the mats for the teacher is common practice, no source. */
export const USUAL_TEACHER_DEPTH = 2200;

/** A strip of that depth along the whole of a wall, for the teacher to stand in. Millimetres. */
export function teacherStrip(outline: Polygon, wall: number, depth: number = USUAL_TEACHER_DEPTH): Polygon {
  const from = cornerAt(outline, wall);
  const to = cornerAt(outline, (wall + 1) % outline.length);
  const inward = scaled(outwardOf(outline, wall), -depth);
  return [from, to, snapPoint(added(to, inward)), snapPoint(added(from, inward))];
}
