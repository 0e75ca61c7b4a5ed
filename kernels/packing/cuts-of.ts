import { roundDown, roundUp } from "./grid-lines.ts";
import type { Frame } from "./strips.ts";

/** Where wings are tried apart: at most this many sides of pockets, fixtures and zones, the largest first. */
const SIDES = 2;
const CENTIMETRE = 10;

/**
 * Places along the lines (x in the frame) at which the floor may be parted: rectangles of the one wing end
 * there, those of the next start a gap further. Each side of an obstacle taller than a line suggests two: the
 * end of the room beside it, and before that the end of the columns that fit from the wall. All on whole
 * centimetres from the left, so that a parted plan is not harder to set out.
 */
export function cutsOf(frame: Frame, wall: number): readonly number[] {
  const gap = frame.pitchAlong - frame.width;
  const cuts = new Set<number>();
  for (const side of largestSides(frame)) {
    const end = side.free === "left" ? side.x - wall : side.x + wall - gap;
    const column = side.free === "left" ? lastColumnEnd(frame, end) : firstColumnStart(frame, end) - gap;
    for (const at of [end, column]) {
      const cut = roundUp(at - frame.left, CENTIMETRE) + frame.left;
      if (cut - frame.width >= frame.firstAlong && cut + gap <= frame.lastAlong) cuts.add(cut);
    }
  }
  return [...cuts].sort((a, b) => a - b);
}

type Side = { readonly x: number; readonly free: "left" | "right"; readonly size: number };

function largestSides(frame: Frame): readonly Side[] {
  const { obstacles, left, firstAlong, lastAlong, width, height } = frame;
  const right = lastAlong + width;
  const sides: Side[] = [];
  for (let i = 0; i < obstacles.count; i++) {
    const [from, to] = [obstacles.leftmost[i]!, obstacles.rightmost[i]!];
    const tall = obstacles.high[i]! - obstacles.low[i]!;
    if (tall < height) continue;
    const size = tall * Math.min(to - from, right - left);
    if (from > firstAlong && from < right) sides.push({ x: from, free: "left", size });
    if (to > firstAlong && to < right) sides.push({ x: to, free: "right", size });
  }
  return sides.sort((a, b) => b.size - a.size || a.x - b.x).slice(0, SIDES);
}

/** Where the last of the columns counted from the left wall ends at or before the place. */
function lastColumnEnd(frame: Frame, place: number): number {
  const pitch = roundUp(frame.pitchAlong, CENTIMETRE);
  const gap = frame.pitchAlong - frame.width;
  return frame.firstAlong + Math.floor((place + gap - frame.firstAlong) / pitch) * pitch - gap;
}

/** Where the first of the columns counted from the right wall starts at or after the gap past the place. */
function firstColumnStart(frame: Frame, place: number): number {
  const pitch = roundUp(frame.pitchAlong, CENTIMETRE);
  const start = place + frame.pitchAlong - frame.width;
  const first = frame.lastAlong - Math.floor((frame.lastAlong - start) / pitch) * pitch;
  return roundDown(first - frame.left, CENTIMETRE) + frame.left;
}
