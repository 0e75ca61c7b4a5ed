import { forbiddenSpans } from "./forbidden-spans.ts";
import { narrow, type Room } from "./hull-walls.ts";
import { mostInLine } from "./most-in-line.ts";
import { type Stack, stackLines } from "./stack-lines.ts";
import type { Frame, Strip, Strips } from "./strips.ts";

/** Lines whose offsets and rectangles lie whole numbers of `grid` millimetres from the corner of the frame. */
export type Grid = {
  readonly frame: Frame;
  readonly grid: 10 | 1;
  readonly pitchAlong: number;
  readonly pitchAcross: number;
  readonly lastAcross: number;
};

/** A line by its offset from the bottom of the frame. */
export type GridLine = { readonly at: number; readonly holds: number };

/** What a multiple may miss by and still be one, after turning. */
const NEAR = 1e-6;

export function gridOf(frame: Frame, grid: 10 | 1): Grid {
  return {
    frame,
    grid,
    pitchAlong: roundUp(frame.pitchAlong, grid),
    pitchAcross: roundUp(frame.pitchAcross, grid),
    lastAcross: roundDown(frame.lastAcross - frame.bottom, grid),
  };
}

/** The same number of rectangles on the grid, near the stack where that works, else anywhere; null when not. */
export function stackOnGrid(grid: Grid, strips: Strips, stack: Stack): readonly GridLine[] | null {
  const near = followStack(grid, strips, stack);
  if (near !== null || grid.grid === 1) return near;
  const anywhere = stackLines(singlesOnGrid(grid, strips), "least", grid.pitchAcross);
  if (anywhere.count < stack.count) return null;
  return anywhere.lines.map(({ at, holds }) => ({ at: at - grid.frame.bottom, holds }));
}

/** How far above its exact offset a line is looked for, in grid steps. */
const TRIES = 8;

function followStack(grid: Grid, strips: Strips, stack: Stack): readonly GridLine[] | null {
  const lines: GridLine[] = [];
  let earliest = -Infinity;
  for (const { at, holds } of stack.lines) {
    const start = Math.max(earliest, roundUp(at - grid.frame.bottom, grid.grid));
    const tries = Array.from({ length: TRIES }, (_, step) => start + step * grid.grid);
    const found = tries.find((offset) => holdsOnGrid(grid, strips, offset) >= holds);
    if (found === undefined) return null;
    lines.push({ at: found, holds });
    earliest = found + grid.pitchAcross;
  }
  return lines;
}

function singlesOnGrid(grid: Grid, strips: Strips): readonly Strip[] {
  const singles: Strip[] = [];
  const { bottom, firstAcross } = grid.frame;
  let strip = 0;
  for (let at = roundUp(firstAcross - bottom, grid.grid); at <= grid.lastAcross; at += grid.grid) {
    while ((strips.list[strip]?.to ?? Infinity) < at + bottom) strip++;
    if (strips.list[strip]?.most === 0) continue;
    const holds = holdsOnGrid(grid, strips, at);
    singles.push({ from: at + bottom, to: at + bottom, most: holds, least: holds, spans: null });
  }
  return singles;
}

export function holdsOnGrid(grid: Grid, strips: Strips, at: number): number {
  if (at > grid.lastAcross) return 0;
  const { room, spans } = lineOnGrid(grid, strips, at);
  return mostInLine(room.first, room.last, grid.pitchAlong, spans);
}

/** Where left edges may lie in a line, from the left of the frame; all ends lie on the grid and are allowed. */
export type LineOnGrid = { readonly room: Room; readonly spans: Float64Array };

export function lineOnGrid({ frame, grid }: Grid, strips: Strips, at: number): LineOnGrid {
  const { obstacles, height, width, left, bottom } = frame;
  const spans = new Float64Array(2 * obstacles.count);
  strips.steps++;
  forbiddenSpans(obstacles, bottom + at, bottom + at + height, width, spans);
  for (let i = 0; i < spans.length; i += 2) {
    spans[i] = roundDown(spans[i]! - left, grid);
    spans[i + 1] = roundUp(spans[i + 1]! - left, grid);
  }
  const room = { first: frame.firstAlong, last: frame.lastAlong };
  narrow(frame.walls, bottom + at, bottom + at, "throughout", room);
  return {
    room: { first: roundUp(room.first - left, grid), last: roundDown(room.last - left, grid) },
    spans,
  };
}

export function roundUp(length: number, grid: number): number {
  return Math.ceil((length - NEAR) / grid) * grid;
}

export function roundDown(length: number, grid: number): number {
  return Math.floor((length + NEAR) / grid) * grid;
}
