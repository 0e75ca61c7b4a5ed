// Example: 720 cells of half a degree; cell 90 is open for near ends from 1000 to 2000 mm when a rectangle anywhere at
// 44.75° to 45.25° and 1000 to 2000 mm from the centre might stand free.
// Invariant: a direction and distance that the floor allows lies in an open cell; one in an open cell may still be shut.
import type { Point } from "#kernels/geometry";
import type { Floor, Gaps, Piece } from "./packing-types.ts";
import { standsFree } from "./stands-free.ts";

const CELLS = 720;
/** From one distance looked at to the next, in millimetres. */
const STEP = 20;
/** Rectangles this near to each other in distance are looked at as one size. Millimetres. */
const BAND = 500;

export type OpenDirections = {
  /** per cell whether it is open for any near end between the two, in millimetres from the centre */
  readonly between: (from: number, to: number) => readonly boolean[];
  /** the furthest that a near end may be; null where no cell is open */
  readonly furthest: number | null;
};

/**
 * Where rectangles may stand that point at the centre, their near ends at least so far from it. Each is looked at
 * smaller by as much as any within half a step of it has moved, so that it lies inside all of them.
 */
export function openDirections(
  floor: Floor,
  piece: Piece,
  { wall }: Gaps,
  centre: Point,
  least: number,
): OpenDirections {
  const reach = Math.max(...floor.outline.map(([x, y]) => Math.hypot(x - centre[0], y - centre[1])));
  // per distance, and per cell, at how many of the distances before it the cell is open
  const sums = [new Uint32Array(CELLS)];
  let furthest: number | null = null;
  let isFree = freeWithin(floor, piece, wall, least);
  for (let index = 0; least + STEP * (index - 0.5) + piece.length <= reach; index++) {
    const near = least + STEP * index;
    if (index % (BAND / STEP) === 0) isFree = freeWithin(floor, piece, wall, near);
    const before = sums[index] ?? new Uint32Array(CELLS);
    const next = before.map((sum, cell) => sum + (isFree(atCell(piece, centre, near, cell)) ? 1 : 0));
    if (next.some((sum, cell) => sum !== before[cell])) furthest = near + STEP / 2;
    sums.push(next);
  }
  const row = (index: number) => sums[Math.min(sums.length - 1, Math.max(0, index))];
  const between = (from: number, to: number): readonly boolean[] => {
    const first = row(Math.ceil((from - least) / STEP - 0.5 - 1e-9));
    const last = row(Math.floor((to - least) / STEP + 0.5 + 1e-9) + 1);
    return Array.from({ length: CELLS }, (_, cell) => (last?.[cell] ?? 0) > (first?.[cell] ?? 0));
  };
  return { between, furthest };
}

/** Of rectangles whose near ends are at most a band further than that. All are free that would have no size left. */
function freeWithin(floor: Floor, piece: Piece, wall: number, near: number) {
  const far = Math.hypot(near + BAND + STEP + piece.length, piece.width / 2);
  const moved = far * (Math.PI / CELLS) + STEP / 2;
  const smaller = { length: piece.length - 2 * moved, width: piece.width - 2 * moved };
  return smaller.length > 0 && smaller.width > 0 ? standsFree(floor, smaller, wall) : () => true;
}

function atCell(piece: Piece, [x, y]: Point, near: number, cell: number) {
  const degrees = (360 * cell) / CELLS;
  const radians = (degrees * Math.PI) / 180;
  const out = near + piece.length / 2;
  const at: Point = [x + out * Math.cos(radians), y + out * Math.sin(radians)];
  return { centre: at, angle: degrees % 180 };
}
