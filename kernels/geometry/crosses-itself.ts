import type { Point, Polygon } from "./point.ts";
import { edgesOf } from "./polygon-distance.ts";
import { segmentDistance } from "./segment-distance.ts";

/**
 * The first two walls (by index of their first corner) that cross or touch away from a shared corner, or
 * null when the outline is simple. A wall that runs back over its neighbour counts as touching.
 */
export function crossesItself(polygon: Polygon): readonly [first: number, second: number] | null {
  const edges = edgesOf(polygon);
  for (const [i, [a, b]] of edges.entries()) {
    for (let j = i + 1; j < edges.length; j++) {
      const [c, d] = edges[j] ?? [a, b];
      if (wallsMeetWrongly(a, b, c, d, i === j - 1, i === 0 && j === edges.length - 1)) return [i, j];
    }
  }
  return null;
}

function wallsMeetWrongly(a: Point, b: Point, c: Point, d: Point, next: boolean, last: boolean): boolean {
  if (next && last) return true;
  if (next) return foldsBack(a, b, d);
  if (last) return foldsBack(c, d, b);
  return segmentDistance(a, b, c, d) === 0;
}

/** Whether the path from → corner → to turns straight back on itself. */
function foldsBack(from: Point, corner: Point, to: Point): boolean {
  const [ux, uy] = [from[0] - corner[0], from[1] - corner[1]];
  const [vx, vy] = [to[0] - corner[0], to[1] - corner[1]];
  return ux * vy - uy * vx === 0 && ux * vx + uy * vy > 0;
}
