import { fillFrame, type Filling, startFilling } from "./fill-frame.ts";
import type { Frame } from "./strips.ts";

/** A floor parted at cuts, each wing with lines of its own; `upper` bounds every choice among the cuts. */
export type Wings = {
  readonly upper: number;
  readonly wings: readonly Filling[] | null;
  readonly steps: number;
};

/**
 * The best choice of cuts, if it holds at least `needed`: wings are filled only as far as the choice with the
 * highest bound depends on them.
 */
export function fillWings(whole: Filling, cuts: readonly number[], needed: number, steps: number): Wings {
  const board = { frame: whole.strips.frame, cuts, wings: new Map([[keyOf(-1, cuts.length), whole]]) };
  const before = stepsOf(board);
  for (;;) {
    const { count, wings } = bestChoice(board);
    const used = stepsOf(board) - before;
    if (count < needed) return { upper: count, wings: null, steps: used };
    const doubtful = wings.filter((wing) => wing.lower.count < wing.upper.count);
    if (doubtful.length === 0) return { upper: count, wings, steps: used };
    const settled = doubtful.filter((wing) => settle(wing, steps - used));
    if (used >= steps || settled.length === 0) return { upper: count, wings: null, steps: used };
  }
}

/** Fills the wing until its bound falls or can be built; false when neither came about. */
function settle(wing: Filling, steps: number): boolean {
  const before = wing.upper.count;
  fillFrame(wing, before, wing.strips.steps + steps);
  return wing.upper.count < before || wing.lower.count === before;
}

type Board = {
  readonly frame: Frame;
  readonly cuts: readonly number[];
  readonly wings: Map<number, Filling>;
};

/** By dynamic programming over the cuts from the left: what is left of a cut is filled best on its own. */
function bestChoice(board: Board): { readonly count: number; readonly wings: readonly Filling[] } {
  const best: { count: number; wings: readonly Filling[] }[] = [];
  for (let to = 0; to <= board.cuts.length; to++) {
    let held = { count: -1, wings: [] as readonly Filling[] };
    for (let from = -1; from < to; from++) {
      const wing = wingBetween(board, from, to);
      const count = (from < 0 ? 0 : (best[from]?.count ?? 0)) + wing.upper.count;
      if (count > held.count) held = { count, wings: [...(best[from]?.wings ?? []), wing] };
    }
    best.push(held);
  }
  return best.at(-1) ?? { count: 0, wings: [] };
}

function wingBetween(board: Board, from: number, to: number): Filling {
  const key = keyOf(from, to);
  const known = board.wings.get(key);
  if (known !== undefined) return known;
  const wing = startFilling(clipped(board.frame, board.cuts[from] ?? -Infinity, board.cuts[to] ?? Infinity));
  board.wings.set(key, wing);
  return wing;
}

/** The frame with its lines kept between two cuts. */
function clipped(frame: Frame, from: number, to: number): Frame {
  const gap = frame.pitchAlong - frame.width;
  return {
    ...frame,
    firstAlong: Math.max(frame.firstAlong, from + gap),
    lastAlong: Math.min(frame.lastAlong, to - frame.width),
  };
}

function keyOf(from: number, to: number): number {
  return (from + 1) * 1000 + to;
}

function stepsOf(board: Board): number {
  let steps = 0;
  for (const wing of board.wings.values()) steps += wing.strips.steps;
  return steps;
}
