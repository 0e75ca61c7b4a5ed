import { boundsOf, edgesOf, type Point, pointToSegment, type Polygon } from "#kernels/geometry";
import type { FloorDraft } from "../floor-draft.ts";

/**
 * The floor as square cells: which can be the middle of a round thing that is to pass without touching a wall or a
 * fixture. A hall of 8 × 12 m has 800 × 1200 cells of 10 mm, and a rim of shut ones round it so that every open cell
 * has eight neighbours. Lengths in millimetres; cells are numbered row by row from the bottom left.
 */
export type WayGrid = {
  readonly step: number;
  readonly columns: number;
  readonly rows: number;
  readonly left: number;
  readonly bottom: number;
  /** 1 where the middle may not be, 0 where it may */
  readonly shut: Uint8Array;
  /** from an open cell to its neighbours, those along its sides first */
  readonly around: readonly number[];
};

/** A fifth of a person's breadth is lost in 10 mm cells; a million and a bit of them take a tenth of a second. */
const FINEST = 10;
const MOST_CELLS = 1_200_000;

/** The step at which a floor has no more cells than can be searched at once: 10 mm up to 120 m². */
export function stepFor(outline: Polygon, mostCells: number = MOST_CELLS): number {
  const { left, bottom, right, top } = boundsOf(outline);
  return Math.max(FINEST, Math.ceil(Math.sqrt(((right - left) * (top - bottom)) / mostCells)));
}

/** Every cell whose middle is on the floor and at least `reach` from each wall and fixture is open. */
export function wayGrid({ outline, fixtures }: FloorDraft, step: number, reach: number): WayGrid {
  const { left, bottom, right, top } = boundsOf(outline);
  const columns = Math.ceil((right - left) / step) + 2;
  const rows = Math.ceil((top - bottom) / step) + 2;
  const grid = {
    step,
    columns,
    rows,
    left: left - step,
    bottom: bottom - step,
    shut: new Uint8Array(columns * rows).fill(1),
    around: [-1, 1, -columns, columns, -columns - 1, 1 - columns, columns - 1, columns + 1],
  };
  fillInside(grid, outline, 0);
  for (const fixture of fixtures) fillInside(grid, fixture.outline, 1);
  for (const [from, to] of [outline, ...fixtures.map((it) => it.outline)].flatMap(edgesOf))
    forCells(grid, [from, to], reach, (cell, middle) => {
      if (grid.shut[cell] === 0 && pointToSegment(middle, from, to) < reach - HAIR) grid.shut[cell] = 1;
    });
  closeRim(grid);
  return grid;
}

function closeRim({ columns, rows, shut }: WayGrid): void {
  shut.fill(1, 0, columns);
  shut.fill(1, columns * (rows - 1));
  for (let row = 0; row < rows; row++) {
    shut[row * columns] = 1;
    shut[(row + 1) * columns - 1] = 1;
  }
}

/** A millionth of a millimetre: what sums of distances leave. */
export const HAIR = 1e-6;

export function middleOfCell({ left, bottom, step, columns }: WayGrid, cell: number): Point {
  const column = cell % columns;
  return [left + (column + 0.5) * step, bottom + ((cell - column) / columns + 0.5) * step];
}

/** The cell that a point of the floor lies in. */
export function cellAt({ left, bottom, step, columns }: WayGrid, [x, y]: Point): number {
  return Math.floor((y - bottom) / step) * columns + Math.floor((x - left) / step);
}

/** Visits the cells with their middle in the upright box round the points, grown by `reach`. */
export function forCells(
  grid: WayGrid,
  points: readonly Point[],
  reach: number,
  visit: (cell: number, middle: Point) => void,
): void {
  const { left, bottom, right, top } = boundsOf(points);
  const [fromColumn, toColumn] = span(grid.left, grid.step, grid.columns, left - reach, right + reach);
  const [fromRow, toRow] = span(grid.bottom, grid.step, grid.rows, bottom - reach, top + reach);
  for (let row = fromRow; row <= toRow; row++) {
    const y = grid.bottom + (row + 0.5) * grid.step;
    for (let column = fromColumn; column <= toColumn; column++)
      visit(row * grid.columns + column, [grid.left + (column + 0.5) * grid.step, y]);
  }
}

function span(
  start: number,
  step: number,
  count: number,
  from: number,
  to: number,
): readonly [number, number] {
  return [
    Math.max(0, Math.ceil((from - start) / step - 0.5)),
    Math.min(count - 1, Math.floor((to - start) / step - 0.5)),
  ];
}

/** Row by row between every second crossing with the outline. */
function fillInside(grid: WayGrid, polygon: Polygon, value: 0 | 1): void {
  for (let row = 0; row < grid.rows; row++) {
    const y = grid.bottom + (row + 0.5) * grid.step;
    const crossed = crossings(polygon, y);
    for (let pair = 0; pair + 1 < crossed.length; pair += 2) {
      const [from, to] = span(grid.left, grid.step, grid.columns, crossed[pair] ?? 0, crossed[pair + 1] ?? 0);
      for (let column = from; column <= to; column++) grid.shut[row * grid.columns + column] = value;
    }
  }
}

function crossings(polygon: Polygon, y: number): readonly number[] {
  return edgesOf(polygon)
    .flatMap(([[ax, ay], [bx, by]]) => (ay > y === by > y ? [] : [ax + ((y - ay) / (by - ay)) * (bx - ax)]))
    .sort((a, b) => a - b);
}
