// Example: 555 mm is half a mat's width with its gap, 2030 its length with it. Mats whose near ends, with half a gap, are
// 850 to 1800 mm from the centre all cross the circle of 2000 mm in full, each on 2 · asin(555 / 2000) = 32.2° of it: no
// more than 11 lie there.
// Invariant: every rectangle that points at the centre crosses one of the chosen circles in full, so the sum of what
// the circles hold is a bound. Why is in the notes.
import type { Point } from "#kernels/geometry";
import type { Floor, Gaps, Piece } from "./packing-types.ts";
import { ringHolds } from "./ring-of-angles.ts";
import { type OpenDirections, openDirections } from "./open-directions.ts";

/** How finely circles are chosen, in millimetres. */
const STEP = 10;
/** What the check of a plan lets pass, several times over. Millimetres. */
const HAIR = 0.01;

/** A rectangle grown by half its gaps: half across, and along. Millimetres. */
type Grown = { readonly half: number; readonly along: number };

/**
 * No plan of rectangles that all point at the centre, their near ends at least so far from it, holds more: at any
 * real angle and distance, in rings or not. Infinity where half a gap reaches the centre: then nothing is said.
 */
export function ringBound(floor: Floor, piece: Piece, gaps: Gaps, centre: Point, least: number): number {
  const grown = { half: (piece.width + gaps.side) / 2 - HAIR, along: piece.length + gaps.end - HAIR };
  const nearest = least - gaps.end / 2;
  if (nearest <= 0) return Infinity;
  const open = openDirections(floor, piece, gaps, centre, least);
  if (open.furthest === null) return 0;
  return leastSum(grown, nearest, open.furthest - gaps.end / 2, (circle) =>
    heldBy(circle, grown, open, gaps.end / 2),
  );
}

/** Of all rows of circles of which every rectangle crosses one in full, the least that one holds: by dynamic programme. */
function leastSum(
  { half, along }: Grown,
  nearest: number,
  furthest: number,
  holds: (circle: number) => number,
): number {
  const first = nearest + along;
  const circles: { readonly at: number; readonly sum: number }[] = [];
  let least = Infinity;
  for (let at = first - STEP * Math.floor((first - half) / STEP); ; at += STEP) {
    const before = circles.filter((it) => reachOf(it.at, half) + along >= at).map((it) => it.sum);
    const sum = holds(at) + (at <= first ? 0 : Math.min(...before));
    circles.push({ at, sum });
    if (reachOf(at, half) < furthest) continue;
    least = Math.min(least, sum);
    if (reachOf(at - along, half) >= furthest) return least;
  }
}

/** The furthest near end of a rectangle that crosses the circle in full: its near corners lie on it. */
function reachOf(circle: number, half: number): number {
  return circle <= half ? 0 : Math.sqrt(circle * circle - half * half);
}

/** How many rectangles can cross a circle in full: each has an arc of it for its own. */
function heldBy(circle: number, { half, along }: Grown, open: OpenDirections, halfGap: number): number {
  const arc = (2 * Math.asin(Math.min(1, half / circle)) * 180) / Math.PI;
  const cells = open.between(circle - along + halfGap, reachOf(circle, half) + halfGap);
  if (!cells.includes(true)) return 0;
  const degrees = 360 / cells.length;
  // two directions each lie up to half a cell from the middle of theirs
  const steps = Math.max(1, Math.ceil(arc / degrees - 1e-9) - 1);
  const round = Math.floor(360 / arc + 1e-9);
  return Math.min(round, ringHolds(cells, steps), byRuns(cells, degrees, arc));
}

/** Of every run of open cells as many as its length holds, and one more. */
function byRuns(cells: readonly boolean[], degrees: number, arc: number): number {
  const shut = cells.indexOf(false);
  if (shut < 0) return Infinity;
  let [sum, run] = [0, 0];
  for (let at = 1; at <= cells.length; at++) {
    if (cells[(shut + at) % cells.length] === true) run++;
    else {
      if (run > 0) sum += Math.floor((run * degrees) / arc + 1e-9) + 1;
      run = 0;
    }
  }
  return sum;
}
