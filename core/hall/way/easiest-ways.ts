import type { CoveredCells } from "./covered-cells.ts";
import type { WayGrid } from "./way-grid.ts";

/** For each cell, how many mats the easiest way to a door pushes through, and the next cell of that way. */
export type EasiestWays = { readonly mats: Int32Array; readonly next: Int32Array };

export const NO_WAY = 0x7fffffff;

/** Ways from the doors inwards that enter as few mats as can be; a mat that is left and entered again counts twice. */
export function easiestWays(grid: WayGrid, covered: CoveredCells, doors: readonly number[]): EasiestWays {
  const mats = new Int32Array(grid.shut.length).fill(NO_WAY);
  const next = new Int32Array(grid.shut.length).fill(-1);
  const waiting: number[][] = [];
  const offer = (cell: number, cost: number, from: number): void => {
    if (cost >= (mats[cell] ?? 0)) return;
    mats[cell] = cost;
    next[cell] = from;
    (waiting[cost] ??= []).push(cell);
  };
  for (const cell of doors) offer(cell, covered.sets[covered.setOf[cell] ?? 0]?.length ?? 0, -1);
  // costs only rise, so that each cost is done when the next begins
  for (let cost = 0; cost < waiting.length; cost++) {
    const list = waiting[cost] ?? [];
    for (const cell of list) {
      if (mats[cell] !== cost) continue;
      for (const away of grid.around)
        if (grid.shut[cell + away] === 0)
          offer(cell + away, cost + entered(covered, cell, cell + away), cell);
    }
  }
  return { mats, next };
}

/** How many mats are touched in the second cell and not in the first. */
function entered({ setOf, sets }: CoveredCells, from: number, to: number): number {
  const [before, after] = [setOf[from] ?? 0, setOf[to] ?? 0];
  if (before === after || after === 0) return 0;
  const known = sets[before] ?? [];
  return (sets[after] ?? []).filter((mat) => !known.includes(mat)).length;
}

/** Every mat that the way from the cell to a door touches, rising. */
export function matsOnWay(
  { next }: EasiestWays,
  { setOf, sets }: CoveredCells,
  from: number,
): readonly number[] {
  const met = new Set<number>();
  for (let cell = from; cell >= 0; cell = next[cell] ?? -1) met.add(setOf[cell] ?? 0);
  return [...new Set([...met].flatMap((set) => sets[set] ?? []))].sort((a, b) => a - b);
}
