import { containsPoint } from "./contains-point.ts";
import type { Point, Polygon } from "./point.ts";
import { segmentDistance } from "./segment-distance.ts";

/** Shortest distance between two filled polygons; 0 when they touch, overlap or one lies in the other. */
export function polygonDistance(one: Polygon, other: Polygon): number {
  const [first, second] = [one[0], other[0]];
  if (first === undefined || second === undefined) return Infinity;
  if (containsPoint(one, second) || containsPoint(other, first)) return 0;
  return edgeDistance(one, other);
}

/** Shortest distance between the two outlines, whatever lies inside them. */
export function edgeDistance(one: Polygon, other: Polygon): number {
  let least = Infinity;
  for (const [a, b] of edgesOf(one)) {
    for (const [c, d] of edgesOf(other)) least = Math.min(least, segmentDistance(a, b, c, d));
  }
  return least;
}

export function edgesOf(polygon: Polygon): readonly (readonly [from: Point, to: Point])[] {
  return polygon.map((corner, index) => [corner, polygon[(index + 1) % polygon.length] ?? corner] as const);
}
