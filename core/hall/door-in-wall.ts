import type { Point, Polygon } from "#kernels/geometry";
import { cornerAt } from "./floor-corners.ts";
import type { Door } from "./door-swing.ts";
import type { KeepClear } from "./hall.ts";
import { cross, direction, dot, subtracted } from "./vectors.ts";

/** Corners are whole millimetres, so that the leaf of a door in a leaning wall lies up to a millimetre beside it. */
const BESIDE = 2;

/**
 * The door that a zone was drawn for: { hinge: [1000, 0], closed: [1900, 0] } in the room of 8 × 12 m is the door
 * in wall 0, hinge 1000 from its corner, 900 wide, reaching on. Null for a zone without a leaf, and for a leaf that
 * stands in no wall.
 */
export function doorInWall(outline: Polygon, zone: KeepClear): Door | null {
  const leaf = zone.door;
  if (leaf === undefined) return null;
  const wall = outline.findIndex((_, index) => liesIn(outline, index, leaf.hinge, leaf.closed));
  if (wall < 0) return null;
  const from = cornerAt(outline, wall);
  const way = direction(from, cornerAt(outline, (wall + 1) % outline.length));
  const reach = dot(subtracted(leaf.closed, leaf.hinge), way);
  return {
    wall,
    hingeAt: Math.round(dot(subtracted(leaf.hinge, from), way)),
    width: Math.round(Math.abs(reach)),
    reaches: reach >= 0 ? "on" : "back",
    label: zone.label,
    ...(leaf.wayOut === undefined ? {} : { wayOut: leaf.wayOut }),
  };
}

/** Whether both points lie in the wall, from its first corner to its second. */
function liesIn(outline: Polygon, wall: number, ...points: readonly Point[]): boolean {
  const from = cornerAt(outline, wall);
  const to = cornerAt(outline, (wall + 1) % outline.length);
  const way = direction(from, to);
  const length = dot(subtracted(to, from), way);
  return points.every((point) => {
    const off = subtracted(point, from);
    const along = dot(off, way);
    return Math.abs(cross(way, off)) <= BESIDE && along >= -BESIDE && along <= length + BESIDE;
  });
}
