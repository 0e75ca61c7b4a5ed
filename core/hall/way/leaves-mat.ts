import type { CoveredCells } from "./covered-cells.ts";
import type { FreeParts } from "./free-parts.ts";
import type { WayGrid } from "./way-grid.ts";

/** A floor with its mats, and where its doors are. */
export type MattedFloor = {
  readonly grid: WayGrid;
  readonly covered: CoveredCells;
  readonly free: FreeParts;
  /** 1 for the cells from which a door is reached */
  readonly atDoor: Uint8Array;
  /** parts of the free floor with a door */
  readonly partsWithDoor: ReadonlySet<number>;
  /** scratch: 1 for cells gone over from the one mat that covers them; no two mats share any */
  readonly seen: Uint8Array;
};

/**
 * Whether somebody gets from the `start` cells of her mat to a door past all other mats: over cells that are free or
 * that only her own mat covers. `near` are cells among which are all that her mat covers; they are asked for only
 * when the cells round the start do not settle it.
 */
export function leavesMat(
  floor: MattedFloor,
  mat: number,
  start: readonly number[],
  near: () => readonly number[],
): boolean {
  const { grid, covered, free } = floor;
  const own = covered.sets.findIndex((set) => set.length === 1 && set[0] === mat);
  const isOwn = (cell: number): boolean => grid.shut[cell] === 0 && covered.setOf[cell] === own;
  const parts = new Set(start.map((cell) => free.partOf[cell] ?? 0));
  if (hasDoor(floor, parts)) return true;
  let waiting = start.filter(isOwn);
  do {
    if (spread(floor, isOwn, waiting, parts)) return true;
    // where a free part borders on her mat elsewhere, she can step back over it
    waiting = near().filter((cell) => floor.seen[cell] === 0 && isOwn(cell) && borders(floor, parts, cell));
  } while (waiting.length > 0);
  return false;
}

/** Goes over all her own cells that hang together with those waiting; true as soon as a door is reached. */
function spread(
  floor: MattedFloor,
  isOwn: (cell: number) => boolean,
  from: readonly number[],
  parts: Set<number>,
): boolean {
  const waiting = [...from];
  for (const cell of from) floor.seen[cell] = 1;
  for (let cell = waiting.pop(); cell !== undefined; cell = waiting.pop()) {
    if (floor.atDoor[cell] === 1) return true;
    for (const away of floor.grid.around) {
      const part = floor.free.partOf[cell + away] ?? 0;
      if (part > 0 && !parts.has(part)) {
        if (floor.partsWithDoor.has(part)) return true;
        parts.add(part);
      }
      if (floor.seen[cell + away] === 0 && isOwn(cell + away)) {
        floor.seen[cell + away] = 1;
        waiting.push(cell + away);
      }
    }
  }
  return false;
}

function hasDoor({ partsWithDoor }: MattedFloor, parts: ReadonlySet<number>): boolean {
  return [...parts].some((part) => partsWithDoor.has(part));
}

function borders({ grid, free }: MattedFloor, parts: ReadonlySet<number>, cell: number): boolean {
  return grid.around.some((away) => {
    const part = free.partOf[cell + away] ?? 0;
    return part > 0 && parts.has(part);
  });
}
