import { pointToSegment } from "#kernels/geometry";
import type { KeepClear } from "../hall.ts";
import { forCells, HAIR, type WayGrid } from "./way-grid.ts";
import { waysOut } from "./ways-out.ts";

/** The open cells from which a round thing of that radius comes up to the shut leaf of a way out, to half a cell's diagonal. */
export function doorCells(grid: WayGrid, keepClear: readonly KeepClear[], radius: number): readonly number[] {
  const reach = radius + grid.step * Math.SQRT1_2 + HAIR;
  const found: number[] = [];
  for (const { door } of waysOut(keepClear))
    forCells(grid, [door.hinge, door.closed], reach, (cell, middle) => {
      if (grid.shut[cell] === 0 && pointToSegment(middle, door.hinge, door.closed) <= reach) found.push(cell);
    });
  return found;
}
