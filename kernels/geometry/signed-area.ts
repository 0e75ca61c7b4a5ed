import type { Polygon } from "./point.ts";

/** The area in square millimetres; positive when the corners run anticlockwise (y up). */
export function signedArea(polygon: Polygon): number {
  let twice = 0;
  let before = polygon.at(-1);
  for (const corner of polygon) {
    if (before !== undefined) twice += before[0] * corner[1] - corner[0] * before[1];
    before = corner;
  }
  return twice / 2;
}

export function area(polygon: Polygon): number {
  return Math.abs(signedArea(polygon));
}

/** The same polygon with its corners anticlockwise; the given one itself when it already is. */
export function anticlockwise(polygon: Polygon): Polygon {
  return signedArea(polygon) < 0 ? polygon.toReversed() : polygon;
}
