import type { Laid } from "./laid.ts";
import type { MostSpace, Turn } from "./most-space.ts";
import { type Ground, roomsAt, TOUCH } from "./open-places.ts";
import type { Points } from "./points-of.ts";

/** Places that the floor allows: for each turn rows of one height, lowest first, and in a row from the left. */
export type Places = {
  readonly space: MostSpace;
  readonly size: number;
  readonly turns: Uint8Array;
  /** left and lower edges */
  readonly xs: Float64Array;
  readonly ys: Float64Array;
  /** for each turn the heights of its rows, and the index of the first place of each row and past the last */
  readonly rows: readonly [Rows, Rows];
};

type Rows = { readonly lows: Float64Array; readonly starts: Int32Array };

/** Places with their edges on the lines, and those that touch something to their left or their right. */
export function placesOf(ground: Ground, lines: Points): Places {
  const { space } = ground;
  const [turns, xs, ys]: [number[], number[], number[]] = [[], [], []];
  const rows = space.turns.map((turn, index): Rows => {
    const lows: number[] = [];
    const starts: number[] = [];
    for (const y of heightsOf(turn, lines.ys)) {
      const row = inRow(turn, roomsAt(ground, index === 0 ? 0 : 1, y), lines.xs);
      if (row.length === 0) continue;
      lows.push(y);
      starts.push(xs.length);
      for (const x of row) {
        turns.push(index);
        xs.push(x);
        ys.push(y);
      }
    }
    return { lows: Float64Array.from(lows), starts: Int32Array.from([...starts, xs.length]) };
  });
  return {
    space,
    size: xs.length,
    turns: Uint8Array.from(turns),
    xs: Float64Array.from(xs),
    ys: Float64Array.from(ys),
    rows: [rows[0]!, rows[1]!],
  };
}

function heightsOf({ frame, gapY, stops }: Turn, lines: readonly number[]): readonly number[] {
  const { firstAcross, lastAcross } = frame;
  if (lastAcross < firstAcross) return [];
  const inside = [...lines.map((y) => y + gapY / 2), ...stops].filter(
    (y) => y > firstAcross && y < lastAcross,
  );
  return apart([firstAcross, ...inside, lastAcross]);
}

function inRow({ gapX }: Turn, rooms: readonly number[], lines: readonly number[]): readonly number[] {
  const row: number[] = [];
  for (let i = 0; i < rooms.length; i += 2) {
    const [from, to] = [rooms[i]!, rooms[i + 1]!];
    row.push(from, to);
    for (const x of lines) if (x + gapX / 2 > from && x + gapX / 2 < to) row.push(x + gapX / 2);
  }
  return apart(row);
}

/** In order, one for those nearer than a hundredth of a millimetre. */
function apart(values: readonly number[]): readonly number[] {
  const kept: number[] = [];
  for (const value of [...values].sort((a, b) => a - b))
    if (kept.length === 0 || value - kept.at(-1)! > 0.01) kept.push(value);
  return kept;
}

/** Visits runs of places [from, to) that lie too near one at this place; the place itself is among them. */
export function eachNear(
  { space, rows, xs }: Places,
  turn: number,
  x: number,
  y: number,
  visit: (from: number, to: number) => void,
): void {
  const own = space.turns[turn]!;
  for (const [index, other] of space.turns.entries()) {
    const wide = (own.width + own.gapX + other.width + other.gapX) / 2 - TOUCH;
    const high = (own.height + own.gapY + other.height + other.gapY) / 2 - TOUCH;
    const middleX = x + (own.width - other.width) / 2;
    const middleY = y + (own.height - other.height) / 2;
    const { lows, starts } = rows[index]!;
    for (let row = past(lows, 0, lows.length, middleY - high); row < lows.length; row++) {
      if (lows[row]! >= middleY + high) break;
      const end = starts[row + 1]!;
      const from = past(xs, starts[row]!, end, middleX - wide);
      let to = from;
      while (to < end && xs[to]! < middleX + wide) to++;
      if (to > from) visit(from, to);
    }
  }
}

/** The place of the same turn that is nearest, in the row that is nearest; null where the turn has no places. */
export function nearestPlace({ rows, xs }: Places, { turn, x, y }: Laid): number | null {
  const { lows, starts } = rows[turn];
  if (lows.length === 0) return null;
  const row = nearest(lows, 0, lows.length, y);
  return nearest(xs, starts[row]!, starts[row + 1]!, x);
}

function nearest(sorted: Float64Array, low: number, high: number, value: number): number {
  const above = past(sorted, low, high, value);
  if (above === low) return low;
  return above < high && sorted[above]! - value < value - sorted[above - 1]! ? above : above - 1;
}

/** The first index from low on whose value is greater. */
function past(sorted: Float64Array, low: number, high: number, value: number): number {
  while (low < high) {
    const middle = (low + high) >> 1;
    if (sorted[middle]! > value) high = middle;
    else low = middle + 1;
  }
  return low;
}
