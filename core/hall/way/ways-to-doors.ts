import type { Point } from "#kernels/geometry";
import type { Hall } from "../hall.ts";
import type { NamedMats } from "../mat-in-words.ts";
import type { PlacedMat } from "../mat-plan-types.ts";
import { doorProblems, widthProblems } from "./clear-way.ts";
import { cellsNear, coveredCells } from "./covered-cells.ts";
import { doorCells } from "./door-cells.ts";
import { cellsOnWay, OUT_OF_REACH, type ShortestWays, shortestWays } from "./shortest-ways.ts";
import { stepFor, type WayGrid, wayGrid } from "./way-grid.ts";
import { turnsOf } from "./way-legs.ts";

/**
 * For each mat the middle line of its shortest way of that width to a door, from the middle of the mat, to be drawn;
 * none for a mat that `clearWay` calls stuck. Millimetres. As there, the line keeps off walls, fixtures and other mats
 * by half the width less the diagonal of a cell. Empty where `clearWay` has a problem instead of an answer.
 */
export function waysToDoors(hall: Hall, plan: NamedMats, width: number): readonly (readonly Point[])[] {
  if (widthProblems(width).length > 0 || doorProblems(hall).length > 0) return plan.mats.map(() => []);
  const step = stepFor(hall.outline);
  const reach = width / 2 - step * Math.SQRT1_2;
  const grid = betweenMats(hall, plan, wayGrid(hall, step, reach), reach);
  const ways = shortestWays(grid, doorCells(grid, hall.keepClear, width / 2));
  return plan.mats.map((placed) => {
    const off = steppingOff(hall, placed, grid, ways, reach);
    return off === undefined ? [] : [placed.centre, ...turnsOf(grid, cellsOnWay(ways, off))];
  });
}

/** The same floor with every cell shut that a mat covers. */
function betweenMats(hall: Hall, { mats }: NamedMats, grid: WayGrid, reach: number): WayGrid {
  const { setOf } = coveredCells(grid, hall.mat, mats, reach);
  return { ...grid, shut: grid.shut.map((shut, cell) => (setOf[cell] === 0 ? shut : 1)) };
}

/** Of the free cells round a mat that from which a door is nearest. */
function steppingOff(
  hall: Hall,
  placed: PlacedMat,
  grid: WayGrid,
  { length }: ShortestWays,
  reach: number,
): number | undefined {
  const around = cellsNear(grid, hall.mat, placed, reach + 2 * grid.step);
  let best: number | undefined;
  for (const cell of around) {
    const far = length[cell] ?? OUT_OF_REACH;
    if (far < (best === undefined ? OUT_OF_REACH : (length[best] ?? OUT_OF_REACH))) best = cell;
  }
  return best;
}
