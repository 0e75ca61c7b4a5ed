import type { Gaps, Piece } from "./packing-types.ts";

/** Throws on sizes that are not positive lengths and gaps that are none. */
export function mustBeSound(piece: Piece, gaps: Gaps): void {
  const sizes = [piece.length, piece.width];
  const all = [...sizes, gaps.side, gaps.end, gaps.wall];
  if (sizes.every((size) => size > 0) && all.every((each) => each >= 0 && each < Infinity)) return;
  throw new RangeError(`not a rectangle and its gaps: ${JSON.stringify({ piece, gaps })}`);
}

/** Throws on axes that are none or no numbers. */
export function mustHaveAxes(axes: readonly number[] | "auto"): void {
  if (axes !== "auto" && (axes.length === 0 || !axes.every(Number.isFinite)))
    throw new RangeError(`no axes to try: ${axes.join(", ")}`);
}
