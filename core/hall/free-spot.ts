import {
  boundsOf,
  containsPoint,
  edgeDistance,
  type Point,
  type Polygon,
  polygonDistance,
} from "#kernels/geometry";
import type { FloorDraft } from "./floor-draft.ts";
import { rectangleAt } from "./floor-shapes.ts";
import { snapPoint } from "./floor-snap.ts";

/** Half a metre: in a hall of 200 m² at most about 800 places are looked at. */
const PACE = 500;

/**
 * The bottom left corner for a new thing of that size: on the floor, clear of what stands there, as near to the
 * middle as half metres allow. Where nothing is free, the middle of the floor: she can see it there and move it.
 */
export function freeSpot(draft: FloorDraft, width: number, depth: number): Point {
  const { left, bottom, right, top } = boundsOf(draft.outline);
  const middle: Point = [(left + right - width) / 2, (bottom + top - depth) / 2];
  const taken = [...draft.fixtures, ...draft.keepClear, ...(draft.teacher === null ? [] : [draft.teacher])];
  const isFree = (spot: Point) => {
    // a millimetre smaller all round, so that touching a wall or a neighbour is free
    const inside = rectangleAt([spot[0] + 1, spot[1] + 1], width - 2, depth - 2);
    return liesOn(draft.outline, inside) && taken.every((it) => polygonDistance(inside, it.outline) > 0);
  };
  return snapPoint(pacesAround(middle, { left, bottom, right, top }).find(isFree) ?? middle);
}

/** Places half a metre apart all over the floor, the nearest first. */
function pacesAround(middle: Point, within: ReturnType<typeof boundsOf>): readonly Point[] {
  const across = Math.ceil((within.right - within.left) / PACE / 2);
  const up = Math.ceil((within.top - within.bottom) / PACE / 2);
  const steps = (count: number) =>
    Array.from({ length: 2 * count + 1 }, (_, index) => (index - count) * PACE);
  return steps(across)
    .flatMap((x) => steps(up).map((y): Point => [x, y]))
    .sort((a, b) => Math.hypot(...a) - Math.hypot(...b))
    .map(([x, y]): Point => [middle[0] + x, middle[1] + y]);
}

/** Whether the whole rectangle lies on the floor, walls that cross or not. */
function liesOn(outline: Polygon, rectangle: Polygon): boolean {
  return rectangle.every((corner) => containsPoint(outline, corner)) && edgeDistance(outline, rectangle) > 0;
}
