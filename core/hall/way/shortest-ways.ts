import type { WayGrid } from "./way-grid.ts";

/** For each open cell how far the door is over open cells, in tenths of a cell, and the next cell on the way. */
export type ShortestWays = { readonly length: Int32Array; readonly next: Int32Array };

export const OUT_OF_REACH = 0x7fffffff;

/** A step to a neighbour beside is 10 tenths, to one at a corner 14. */
export function shortestWays(grid: WayGrid, doors: readonly number[]): ShortestWays {
  const length = new Int32Array(grid.shut.length).fill(OUT_OF_REACH);
  const next = new Int32Array(grid.shut.length).fill(-1);
  const waiting: number[][] = [];
  const offer = (cell: number, far: number, from: number): void => {
    if (far >= (length[cell] ?? 0)) return;
    length[cell] = far;
    next[cell] = from;
    (waiting[far] ??= []).push(cell);
  };
  for (const cell of doors) offer(cell, 0, -1);
  for (let far = 0; far < waiting.length; far++)
    for (const cell of waiting[far] ?? []) {
      if (length[cell] !== far) continue;
      for (const [index, away] of grid.around.entries())
        if (grid.shut[cell + away] === 0) offer(cell + away, far + (index < 4 ? 10 : 14), cell);
    }
  return { length, next };
}

/** The cells from one to the door, both included. */
export function cellsOnWay({ next }: ShortestWays, from: number): readonly number[] {
  const cells: number[] = [];
  for (let cell = from; cell >= 0; cell = next[cell] ?? -1) cells.push(cell);
  return cells;
}
