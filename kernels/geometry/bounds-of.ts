import type { Polygon } from "./point.ts";

export type Bounds = {
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
  readonly top: number;
};

/** The smallest upright rectangle round the polygon; infinite and inside out for no corners. */
export function boundsOf(polygon: Polygon): Bounds {
  let [left, bottom, right, top] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const [x, y] of polygon) {
    left = Math.min(left, x);
    right = Math.max(right, x);
    bottom = Math.min(bottom, y);
    top = Math.max(top, y);
  }
  return { left, bottom, right, top };
}
