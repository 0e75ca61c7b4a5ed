import type { CoveredCells } from "./covered-cells.ts";
import type { WayGrid } from "./way-grid.ts";

/** Cells that hang together have one part; 0 for cells that belong to none. */
export type FreeParts = { readonly partOf: Int32Array; readonly parts: number };

/** The parts of the floor where one can move about without touching anything. */
export function freeParts(grid: WayGrid, { setOf }: CoveredCells): FreeParts {
  const partOf = new Int32Array(setOf.length);
  const isFree = (cell: number): boolean => grid.shut[cell] === 0 && setOf[cell] === 0 && partOf[cell] === 0;
  let parts = 0;
  for (let cell = 0; cell < setOf.length; cell++) {
    if (!isFree(cell)) continue;
    parts++;
    const waiting = [cell];
    partOf[cell] = parts;
    for (let at = waiting.pop(); at !== undefined; at = waiting.pop())
      for (const away of grid.around)
        if (isFree(at + away)) {
          partOf[at + away] = parts;
          waiting.push(at + away);
        }
  }
  return { partOf, parts };
}
