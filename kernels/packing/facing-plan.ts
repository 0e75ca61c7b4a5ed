import { area, quarterTurnAngle, rotateAboutOrigin, wallDirections } from "#kernels/geometry";
import { areaBound } from "./area-bound.ts";
import type { ArrangedPlan } from "./arranged-plan.ts";
import { bankBelow, type Bank } from "./bank-of-lines.ts";
import { frameOf } from "./frame-of.ts";
import { mustBeSound } from "./must-be-sound.ts";
import { type Surroundings, surroundingsOf } from "./obstacles.ts";
import type { Floor, Gaps, Piece, Placed } from "./packing-types.ts";

export type FacingPlan = ArrangedPlan & {
  /** the clear middle, square to its direction, from the least y of the hull turned by −direction; null for no plan */
  readonly middle: { readonly from: number; readonly to: number } | null;
};

type Way = {
  readonly floor: Surroundings;
  readonly piece: Piece;
  readonly gaps: Gaps;
  readonly direction: number;
};
type Halves = { readonly below: Bank; readonly above: Bank; readonly edge: number };

/**
 * Two banks of straight lines side by side that face a clear middle of the given width, the teacher in it; at least one
 * rectangle in each bank. The middle's edge lies on a whole centimetre from the low side of the turned floor; of all
 * such plans, lines at any offset, this is the most where it says proven. Lengths in millimetres, axes in
 * degrees. Throws on sizes that are none. Without room for two banks the plan is empty.
 */
export function facingPlan(
  floor: Floor,
  piece: Piece,
  gaps: Gaps,
  axes: readonly number[] | "auto",
  middle: number,
): FacingPlan {
  mustBeSound(piece, gaps);
  if (!(middle >= 0 && middle < Infinity)) throw new RangeError(`not a width for the middle: ${middle}`);
  const wanted = axes === "auto" ? wallDirections(floor.outline) : [...new Set(axes.map(quarterTurnAngle))];
  let best = noneAt(wanted[0] ?? 0);
  if (area(floor.outline) === 0) return best;
  const surroundings = surroundingsOf(floor, gaps.wall);
  let sure = true;
  for (const axis of wanted)
    for (const direction of [axis, axis + 90]) {
      const way = { floor: surroundings, piece, gaps, direction };
      const found = bestMiddle(way, middle);
      sure &&= found.sure;
      if (found.halves !== null && countOf(found.halves) > best.count)
        best = planOf(way, found.halves, middle);
    }
  const bound = sure ? best.count : Math.max(best.count, areaBound(floor, piece, gaps));
  return { ...best, bound, proven: best.count === bound };
}

function noneAt(direction: number): FacingPlan {
  return { direction, lines: [], count: 0, bound: 0, proven: true, middle: null };
}

const CENTIMETRE = 10;

/**
 * The low bank grows in steps as the middle moves up. For each number it can hold the middle is best as low as that
 * allows, because the high bank only loses; so only those places are tried, found by halving.
 */
function bestMiddle(way: Way, middle: number): { readonly halves: Halves | null; readonly sure: boolean } {
  const frame = frameOf(way.piece, way.gaps, way.floor, way.direction, "width");
  const highest = Math.floor((frame.lastAcross + frame.height - frame.bottom) / CENTIMETRE) * CENTIMETRE;
  const below = (edge: number): Bank => bankBelow(frame, frame.bottom + edge);
  const turned = frameOf(way.piece, way.gaps, way.floor, way.direction + 180, "width");
  // seen from the other side, what lies above the middle lies below −edge − middle
  const above = (edge: number): Bank => bankBelow(turned, -(frame.bottom + edge + middle));
  let halves: Halves | null = null;
  let sure = true;
  for (let edge = 0; edge <= highest; ) {
    const count = below(edge).count;
    const next = firstBeyond(edge, highest, count, (at) => below(at).count);
    if (next === null) break;
    const found = { below: below(next), above: above(next), edge: next };
    sure &&= found.below.sure && found.above.sure;
    if (found.above.count === 0) break;
    if (halves === null || countOf(found) > countOf(halves)) halves = found;
    edge = next;
  }
  return { halves, sure };
}

/** The least whole centimetre at which there are more than `count`. */
function firstBeyond(
  from: number,
  to: number,
  count: number,
  countAt: (at: number) => number,
): number | null {
  if (countAt(to) <= count) return null;
  let [low, high] = [from, to];
  while (high - low > CENTIMETRE) {
    const half = low + Math.ceil((high - low) / 2 / CENTIMETRE) * CENTIMETRE;
    if (countAt(half) > count) high = half;
    else low = half;
  }
  return high;
}

function countOf({ below, above }: Halves): number {
  return below.count + above.count;
}

function planOf(way: Way, halves: Halves, middle: number): FacingPlan {
  const { direction } = way;
  const low = halves.below.lines.map((line) => line.map((corner) => placed(way, direction, corner)));
  const high = halves.above.lines.map((line) => line.map((corner) => placed(way, direction + 180, corner)));
  const count = countOf(halves);
  return {
    direction,
    lines: [...low, ...high],
    count,
    bound: count,
    proven: true,
    middle: { from: halves.edge, to: halves.edge + middle },
  };
}

/** A rectangle across its line, by its lower left corner in the frame. */
function placed({ piece }: Way, direction: number, [x, y]: readonly [number, number]): Placed {
  const centre = rotateAboutOrigin([x + piece.width / 2, y + piece.length / 2], direction);
  return { centre, angle: (direction + 90) % 180 };
}
