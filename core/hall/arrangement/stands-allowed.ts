import { checkPlaced, type Floor } from "#kernels/packing";
import type { Hall } from "../hall.ts";
import type { PlacedMat } from "../mat-plan-types.ts";

/**
 * Whether a mat may lie where it does on the floor and beside the others, as the packing kernel's checker has it. The
 * others are not held against the floor or one another. Millimetres.
 */
export function standsAllowed(
  hall: Hall,
  floor: Floor,
  placed: PlacedMat,
  others: readonly PlacedMat[],
): boolean {
  if (checkPlaced(floor, hall.mat, hall.gaps, [placed]).length > 0) return false;
  return others.every(
    (other) =>
      !isNear(hall, placed, other) ||
      checkPlaced(openFloor, hall.mat, hall.gaps, [placed, other]).length === 0,
  );
}

/** False where even two mats end to end and side by side at once would keep their gaps. */
function isNear({ mat, gaps }: Hall, one: PlacedMat, other: PlacedMat): boolean {
  const apart = Math.hypot(one.centre[0] - other.centre[0], one.centre[1] - other.centre[1]);
  return apart < mat.length + mat.width + gaps.end + gaps.side;
}

/** For pairs alone: nothing but one another. */
const openFloor: Floor = {
  outline: [
    [-1e9, -1e9],
    [1e9, -1e9],
    [1e9, 1e9],
    [-1e9, 1e9],
  ],
  fixtures: [],
  keepClear: [],
};
