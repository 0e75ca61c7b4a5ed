import { area } from "#kernels/geometry";
import type { Floor, Gaps, Piece } from "./packing-types.ts";

/**
 * No arrangement of any kind holds more: each rectangle grown by half its gaps owns its area, and no two
 * share any; what sticks out past the outline lies within half a gap of it. Millimetres; fixtures and
 * zones are not counted, so it is a check on other bounds rather than a good one.
 */
export function areaBound(floor: Floor, piece: Piece, gaps: Gaps): number {
  const own = (piece.length + gaps.end) * (piece.width + gaps.side);
  const margin = Math.hypot(gaps.end, gaps.side) / 2;
  return Math.floor(grownArea(floor, margin) / own + 1e-9);
}

/** Not less than the area of the outline grown by the margin: per wall a strip, and the corners' discs. */
function grownArea({ outline }: Floor, margin: number): number {
  const walls = outline.reduce((sum, [x, y], index) => {
    const before = outline.at(index - 1) ?? [x, y];
    return sum + Math.hypot(x - before[0], y - before[1]);
  }, 0);
  return area(outline) + margin * walls + Math.PI * margin * margin;
}
