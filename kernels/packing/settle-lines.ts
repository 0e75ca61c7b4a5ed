import {
  type Grid,
  type GridLine,
  holdsOnGrid,
  type LineOnGrid,
  lineOnGrid,
  roundDown,
} from "./grid-lines.ts";
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
  const open = spread.map((line) => ({ ...line, ...lineOnGrid(grid, strips, line.at) }));
  return open.map((line) => {
    const shared = startsInLine(grid, joined(open.filter((other) => other.holds === line.holds)), line.holds);
    return {
      at: line.at,
      starts: shared.length >= line.holds ? shared : startsInLine(grid, line, line.holds),
    };
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
function startsInLine(grid: Grid, { room, spans }: LineOnGrid, holds: number): readonly number[] {
  const leftmost: number[] = [];
  mostInLine(room.first, room.last, grid.pitchAlong, spans, leftmost);
  const lefts = leftmost.slice(0, holds);
  const rights = rightmost(grid, { room, spans }).slice(-lefts.length);
  const middle = lefts.map(
    (left, index) => left + roundDown(((rights[index] ?? left) - left) / 2, grid.grid),
  );
  return isAllowed(grid, spans, middle) ? middle : lefts;
}

function rightmost(grid: Grid, { room, spans }: LineOnGrid): readonly number[] {
  const mirrored = new Float64Array(spans.length);
  for (let i = 0; i < spans.length; i += 2) {
    mirrored[i] = -spans[i + 1]!;
    mirrored[i + 1] = -spans[i]!;
  }
  const places: number[] = [];
  mostInLine(-room.last, -room.first, grid.pitchAlong, mirrored, places);
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

/** What is open in every one of the lines. */
function joined(lines: readonly LineOnGrid[]): LineOnGrid {
  const first = Math.max(...lines.map((line) => line.room.first));
  const last = Math.min(...lines.map((line) => line.room.last));
  const spans = new Float64Array(lines.reduce((sum, line) => sum + line.spans.length, 0));
  let at = 0;
  for (const line of lines) {
    spans.set(line.spans, at);
    at += line.spans.length;
  }
  return { room: { first, last }, spans };
}
