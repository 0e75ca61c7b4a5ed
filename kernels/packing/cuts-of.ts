import { roundDown, roundUp } from "./grid-lines.ts";
import type { Frame } from "./strips.ts";

/** Where wings are tried apart: this many sides of pockets, fixtures and zones, the largest. */
const SIDES = 2;
const CENTIMETRE = 10;
const NEAR = 1e-3;

/**
 * Places along the lines (x in the frame) at which the floor may be parted: rectangles of the one wing end
 * there, those of the next start a gap further. Each side of a shape taller than a line suggests two: the
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

type Side = {
  readonly x: number;
  readonly free: "left" | "right";
  readonly size: number;
  readonly off: number;
};

/**
 * By size, then by distance from the middle, both to the millimetre so that turning the hall does not change
 * the order; sides that are equal in both come together, so that mirroring does not either.
 */
function largestSides(frame: Frame): readonly Side[] {
  const sides = sidesOf(frame).sort((a, b) => b.size - a.size || a.off - b.off || a.x - b.x);
  const last = sides[SIDES - 1];
  return sides
    .filter((side, index) => index < SIDES || (side.size === last?.size && side.off === last.off))
    .slice(0, 2 * SIDES);
}

function sidesOf({ shapes, firstAlong, lastAlong, width, height }: Frame): Side[] {
  const right = lastAlong + width;
  return shapes.flatMap((shape) => {
    const tall = shape.top - shape.bottom;
    if (tall < height - NEAR) return [];
    const size = Math.round((tall * (shape.right - shape.left)) / 1000);
    return (["left", "right"] as const).flatMap((free) => {
      const x = shape[free];
      const off = Math.round(Math.abs(2 * x - firstAlong - right));
      return x > firstAlong && x < right ? [{ x, free, size, off }] : [];
    });
  });
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
