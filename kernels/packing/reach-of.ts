import { type MostSpace, type Rooms, roomsBetween, type Turn } from "./most-space.ts";

/**
 * Each grown rectangle is taken this much smaller on each side (millimetres), so that plans that touch, or overlap
 * by what turning and adding cost, still count as plans here: a bound that holds for the smaller ones holds.
 */
export const SLACK = 1e-4;
/** Two coordinates nearer than this are one; less than what SLACK allows for. */
export const SAME = 1e-5;

/**
 * Every place a rectangle may take, as far as points can tell: `xs` and `ys` are the coordinates of the points, and
 * each reach is the block of points (half-open ranges of indices) that a rectangle there covers at least. Any
 * allowed rectangle covers one of these blocks.
 */
export type Reaches = {
  readonly xs: readonly number[];
  readonly ys: readonly number[];
  readonly size: number;
  /** xLow, xHigh, yLow, yHigh of each */
  readonly blocks: Int32Array;
  /** left and lower edge of a rectangle of the kind, and its turn */
  readonly lefts: Float64Array;
  readonly lows: Float64Array;
  readonly turns: Uint8Array;
};

/** Lower edges low ≤ y ≤ high, and the left edges that some of them allow. */
export type Slab = { readonly low: number; readonly high: number; readonly rooms: Rooms };

export function slabsOf(turn: Turn, ys: readonly number[], finest: number): readonly Slab[] {
  const { frame, gapY } = turn;
  const [first, last] = [frame.firstAcross, frame.lastAcross];
  if (last < first) return [];
  const cuts = new Set<number>([first, last]);
  for (const y of [...ys.map((at) => at + gapY / 2 - SLACK), ...frame.breaks, ...stopsAndHairs(turn)])
    if (y > first && y < last) cuts.add(y);
  const sorted = [...cuts].sort((a, b) => a - b);
  const slabs: Slab[] = [];
  for (let i = 0; i + 1 < sorted.length; i++) addSlabs(frame, sorted[i]!, sorted[i + 1]!, finest, slabs);
  // a row of points may lie level with the last height, which the slab below does not speak of
  addSlabs(frame, last, last, finest, slabs);
  return slabs;
}

/** Where an obstacle is just cleared, cut so near that the slab between counts as the one height. */
function stopsAndHairs({ stops }: Turn): readonly number[] {
  return stops.flatMap((stop) => [stop - SAME / 2, stop, stop + SAME / 2]);
}

function addSlabs(frame: Turn["frame"], low: number, high: number, finest: number, slabs: Slab[]): void {
  const rooms = roomsBetween(frame, low, high);
  if (rooms.length === 0) return;
  if (high - low > finest && !isUpright(frame, low, high, rooms)) {
    const middle = (low + high) / 2;
    addSlabs(frame, low, middle, finest, slabs);
    addSlabs(frame, middle, high, finest, slabs);
  } else slabs.push({ low, high, rooms });
}

function isUpright(frame: Turn["frame"], low: number, high: number, rooms: Rooms): boolean {
  return [low + 1e-7, (low + high) / 2, high - 1e-7].every((at) => {
    const here = roomsBetween(frame, at, at);
    return here.length === rooms.length && here.every((x, i) => Math.abs(x - rooms[i]!) < SAME);
  });
}

export function reachesOf(
  space: MostSpace,
  xs: readonly number[],
  ys: readonly number[],
  slabs: readonly (readonly Slab[])[],
): Reaches {
  const known = new Map<string, number>();
  const blocks: number[] = [];
  const lefts: number[] = [];
  const lows: number[] = [];
  const turns: number[] = [];
  for (const [index, turn] of space.turns.entries()) {
    const [width, height] = [turn.width + turn.gapX - 2 * SLACK, turn.height + turn.gapY - 2 * SLACK];
    for (const slab of slabs[index] ?? []) {
      const bottom = slab.low - turn.gapY / 2 + SLACK;
      const yLow = firstPast(ys, bottom + SAME);
      const yHigh = firstPast(ys, bottom + height + SAME);
      for (let r = 0; r < slab.rooms.length; r += 2) {
        const from = slab.rooms[r]! - turn.gapX / 2 + SLACK;
        const to = slab.rooms[r + 1]! - turn.gapX / 2 + SLACK;
        add(from);
        for (let i = firstPast(xs, from + SAME); i < xs.length && xs[i]! <= to; i++) add(xs[i]!);
      }
      function add(left: number): void {
        const xLow = firstPast(xs, left + SAME);
        const xHigh = firstPast(xs, left + width + SAME);
        const key = `${xLow},${xHigh},${yLow},${yHigh}`;
        if (known.has(key)) return;
        known.set(key, turns.length);
        blocks.push(xLow, xHigh, yLow, yHigh);
        lefts.push(left + turn.gapX / 2 - SLACK);
        lows.push(slab.low);
        turns.push(index);
      }
    }
  }
  return {
    xs,
    ys,
    size: turns.length,
    blocks: Int32Array.from(blocks),
    lefts: Float64Array.from(lefts),
    lows: Float64Array.from(lows),
    turns: Uint8Array.from(turns),
  };
}

/** Index of the first coordinate greater than the value. */
export function firstPast(sorted: readonly number[], value: number): number {
  let [low, high] = [0, sorted.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (sorted[middle]! > value) high = middle;
    else low = middle + 1;
  }
  return low;
}
