import { containsPoint, type Point } from "#kernels/geometry";
import type { FloorDraft } from "./floor-draft.ts";

/** Whether the point lies inside the walls; for a point in a wall either answer may come. Millimetres. */
export function onFloor({ outline }: Pick<FloorDraft, "outline">, point: Point): boolean {
  return containsPoint(outline, point);
}
