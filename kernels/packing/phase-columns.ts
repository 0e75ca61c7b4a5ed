import { roomsBetween } from "./most-space.ts";
import type { Frame } from "./strips.ts";

/** Places one pitch apart along a line, and which of them are open at each offset of the line. */
export type PhaseColumns = {
  /** left edges in the frame */
  readonly places: readonly number[];
  /** per place: closed intervals of offsets as [from, to] pairs in order */
  readonly heights: readonly (readonly number[])[];
  /** offsets at which a place opens or closes, sorted */
  readonly changes: readonly number[];
  /** how many are open at each change, and between it and the next */
  readonly openAt: readonly number[];
  readonly openPast: readonly number[];
};

/**
 * The offsets each place allows, exactly: seen from the side (the frame turned by a quarter, in which offsets run
 * along lines from right to left) they are the rooms of a line at that height.
 */
export function phaseColumns(frame: Frame, across: Frame, phase: number): PhaseColumns {
  const places: number[] = [];
  const heights: (readonly number[])[] = [];
  const first = frame.left + phase;
  const least = Math.ceil((frame.firstAlong - first) / frame.pitchAlong - 1e-9);
  for (let k = least; first + k * frame.pitchAlong <= frame.lastAlong; k++) {
    const x = first + k * frame.pitchAlong;
    // a turn by a quarter takes (x, y) to (y, −x)
    const low = -x - frame.width;
    const open = roomsBetween(across, low, low);
    if (open.length === 0) continue;
    places.push(x);
    heights.push(open);
  }
  const changes = [...new Set(heights.flat())].sort((a, b) => a - b);
  const openAt = changes.map((y) => openBetween(heights, y, y).length);
  const openPast = changes.map((y, index) => openBetween(heights, y, changes[index + 1] ?? Infinity).length);
  return { places, heights, changes, openAt, openPast };
}

/** Indices of the places that are open at all offsets from low to high. */
export function openBetween(
  heights: readonly (readonly number[])[],
  low: number,
  high: number,
): readonly number[] {
  return heights.flatMap((open, place) => {
    for (let i = 0; i < open.length; i += 2) if (open[i]! <= low && high <= open[i + 1]!) return [place];
    return [];
  });
}
