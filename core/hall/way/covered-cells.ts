import { rotateAboutOrigin } from "#kernels/geometry";
import { rectangleOf } from "#kernels/packing";
import type { Mat } from "../hall.ts";
import type { PlacedMat } from "../mat-plan-types.ts";
import { forCells, HAIR, type WayGrid } from "./way-grid.ts";

/**
 * Which mats a round thing would touch with its middle in a cell. Many cells share few sets, so a cell holds the
 * number of its set: set 0 is no mat.
 */
export type CoveredCells = {
  readonly setOf: Int32Array;
  /** the mats of each set, by index, rising */
  readonly sets: readonly (readonly number[])[];
};

/** The mats that come nearer than `reach` to the middle of each cell, in millimetres. */
export function coveredCells(
  grid: WayGrid,
  mat: Mat,
  mats: readonly PlacedMat[],
  reach: number,
): CoveredCells {
  const setOf = new Int32Array(grid.shut.length);
  const sets: (readonly number[])[] = [[]];
  for (const [index, placed] of mats.entries()) {
    const grown = new Map<number, number>();
    for (const cell of cellsNear(grid, mat, placed, reach - HAIR)) {
      const before = setOf[cell] ?? 0;
      let after = grown.get(before);
      if (after === undefined) {
        after = sets.push([...(sets[before] ?? []), index]) - 1;
        grown.set(before, after);
      }
      setOf[cell] = after;
    }
  }
  return { setOf, sets };
}

/** The open cells whose middle is nearer than `reach` to the mat. */
export function cellsNear(grid: WayGrid, mat: Mat, placed: PlacedMat, reach: number): readonly number[] {
  const [halfLength, halfWidth] = [mat.length / 2, mat.width / 2];
  const [cosine, sine] = rotateAboutOrigin([1, 0], placed.angle);
  const found: number[] = [];
  forCells(grid, rectangleOf(placed, mat), reach, (cell, [x, y]) => {
    if (grid.shut[cell] === 1) return;
    const [dx, dy] = [x - placed.centre[0], y - placed.centre[1]];
    const along = Math.max(0, Math.abs(dx * cosine + dy * sine) - halfLength);
    const across = Math.max(0, Math.abs(dy * cosine - dx * sine) - halfWidth);
    if (along * along + across * across < reach * reach) found.push(cell);
  });
  return found;
}
