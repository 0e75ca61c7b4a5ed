import type { Polygon } from "#kernels/geometry";
import type { Viewport } from "./viewport.ts";

/** 44 px across is what a finger hits without looking; a corner is never harder to hit than its own mark. */
const FINGER = 22;
const MARK = 7;

/** How many pixels around a corner belong to it: not half-way to its nearest neighbour along the walls. */
export function cornerReach(outline: Polygon, corner: number, view: Pick<Viewport, "scale">): number {
  const at = outline[corner] ?? [0, 0];
  const around = [
    outline[(corner + outline.length - 1) % outline.length],
    outline[(corner + 1) % outline.length],
  ];
  const distances = around.map(([x, y] = at) => Math.hypot(x - at[0], y - at[1]) * view.scale);
  return Math.min(FINGER, Math.max(MARK, Math.min(...distances) * 0.45));
}
