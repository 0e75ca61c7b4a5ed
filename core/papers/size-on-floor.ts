import type { HallFrame } from "#core/hall";
import { boundsOf, type Polygon } from "#kernels/geometry";
import type { LengthUnits } from "#core/words";
import { drawnLength, saidLength } from "./said-length.ts";

/** "1.40 m wide and 1.50 m deep": left to right and front to back, as seen facing the front. */
export function sizeOnFloor(shape: Polygon, frame: HallFrame, units: LengthUnits): string {
  const [width, depth] = extents(shape, frame);
  return `${saidLength(width, units)} wide and ${saidLength(depth, units)} deep`;
}

/** "1.40 × 1.50 m". */
export function briefSize(shape: Polygon, frame: HallFrame, units: LengthUnits): string {
  const [width, depth] = extents(shape, frame);
  return `${drawnLength(width, units)} × ${drawnLength(depth, units)}${units === "metric" ? " m" : ""}`;
}

function extents(shape: Polygon, frame: HallFrame): readonly [number, number] {
  const along = (way: readonly [number, number]): number => {
    const { left, right } = boundsOf(shape.map(([x, y]) => [x * way[0] + y * way[1], 0]));
    return right - left;
  };
  return [along(frame.right), along(frame.front)];
}
