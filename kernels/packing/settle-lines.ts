import { type Grid, type GridLine, holdsOnGrid, roundDown, spansOnGrid } from "./grid-lines.ts";
import { mostInLine } from "./most-in-line.ts";
import type { Strips } from "./strips.ts";

/** A line and the left edges of its rectangles, both from the corner of the frame. */
export type SettledLine = { readonly at: number; readonly starts: readonly number[] };

/**
 * Shares the room that is left over: between the lines evenly, and in each line to both sides, in whole grid
 * steps; lines that hold equally many get the same places where one set of places suits them all.
 */
export function settleLines(grid: Grid, strips: Strips, lines: readonly GridLine[]): readonly SettledLine[] {
  const spread = spreadLines(grid, strips, lines);
  const spans = spread.map((line) => spansOnGrid(grid, strips, line.at));
  return spread.map((line, index) => {
    const alike = spans.filter((_, other) => spread[other]?.holds === line.holds);
    const shared = startsInLine(grid, joined(alike), line.holds);
    const own =
      shared.length >= line.holds ? shared : startsInLine(grid, spans[index] ?? joined([]), line.holds);
    return { at: line.at, starts: own };
  });
}

/** How often the room to share is halved before the lines stay where they are. */
const HALVINGS = 6;

function spreadLines(grid: Grid, strips: Strips, lines: readonly GridLine[]): readonly GridLine[] {
  const last = lines.at(-1)?.at ?? 0;
  let share = roundDown((grid.lastAcross - last) / (lines.length + 1), grid.grid);
  for (let halving = 0; halving < HALVINGS && share > 0; halving++) {
    const moved = lines.map(({ at, holds }, index) => ({ at: at + (index + 1) * share, holds }));
    if (moved.every((line) => holdsOnGrid(grid, strips, line.at) >= line.holds)) return moved;
    share = roundDown(share / 2, grid.grid);
  }
  return lines;
}

/** The places halfway between as far left and as far right as the line can stand, or as far left. */
function startsInLine(grid: Grid, spans: Float64Array, holds: number): readonly number[] {
  const leftmost: number[] = [];
  mostInLine(grid.firstAlong, grid.lastAlong, grid.pitchAlong, spans, leftmost);
  const lefts = leftmost.slice(0, holds);
  const rights = rightmost(grid, spans).slice(-lefts.length);
  const middle = lefts.map(
    (left, index) => left + roundDown(((rights[index] ?? left) - left) / 2, grid.grid),
  );
  return isAllowed(grid, spans, middle) ? middle : lefts;
}

function rightmost(grid: Grid, spans: Float64Array): readonly number[] {
  const mirrored = new Float64Array(spans.length);
  for (let i = 0; i < spans.length; i += 2) {
    mirrored[i] = -spans[i + 1]!;
    mirrored[i + 1] = -spans[i]!;
  }
  const places: number[] = [];
  mostInLine(-grid.lastAlong, -grid.firstAlong, grid.pitchAlong, mirrored, places);
  return places.map((place) => -place).toReversed();
}

function isAllowed(grid: Grid, spans: Float64Array, starts: readonly number[]): boolean {
  return starts.every((start, index) => {
    const before = starts[index - 1];
    if (before !== undefined && start - before < grid.pitchAlong) return false;
    for (let i = 0; i < spans.length; i += 2) if (spans[i]! < start && start < spans[i + 1]!) return false;
    return true;
  });
}

function joined(spans: readonly Float64Array[]): Float64Array {
  const all = new Float64Array(spans.reduce((sum, each) => sum + each.length, 0));
  let at = 0;
  for (const each of spans) {
    all.set(each, at);
    at += each.length;
  }
  return all;
}
