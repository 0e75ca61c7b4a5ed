import type { Point, Polygon } from "./point.ts";

/** Whether the point lies inside, by the even-odd rule; on the edge either answer may come, so measure the distance there. */
export function containsPoint(polygon: Polygon, point: Point): boolean {
  let inside = false;
  let before = polygon.at(-1);
  for (const corner of polygon) {
    if (before !== undefined && crossesRay(before, corner, point)) inside = !inside;
    before = corner;
  }
  return inside;
}

/** Whether the edge cuts the ray from the point towards +x; half-open in y so that a corner counts once. */
function crossesRay(from: Point, to: Point, point: Point): boolean {
  if (from[1] > point[1] === to[1] > point[1]) return false;
  const x = from[0] + ((point[1] - from[1]) / (to[1] - from[1])) * (to[0] - from[0]);
  return point[0] < x;
}
