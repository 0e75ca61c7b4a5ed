import type { Point, Polygon } from "#kernels/geometry";

/** What to fill: all lengths in millimetres. */
export type Floor = {
  readonly outline: Polygon;
  /** Rectangles keep `gaps.wall` from these, as from the outline. */
  readonly fixtures: readonly Polygon[];
  /** Rectangles may touch these but not overlap them. */
  readonly keepClear: readonly Polygon[];
};

export type Piece = { readonly length: number; readonly width: number };
export type Gaps = { readonly side: number; readonly end: number; readonly wall: number };

/** A placed rectangle: centre in millimetres, direction of its length in degrees from +x, 0 ≤ angle < 180. */
export type Placed = { readonly centre: Point; readonly angle: number };

/** One straight line of rectangles, nearest the start of its direction first. */
export type Line = { readonly offset: number; readonly pieces: readonly Placed[] };

export type LinesPlan = {
  /** degrees from +x of the frame the plan is aligned to, 0 ≤ axis < 90 */
  readonly axis: number;
  /** whether the length of a rectangle lies along the lines ("end to end") or across them ("side by side") */
  readonly along: "length" | "width";
  readonly lines: readonly Line[];
  readonly count: number;
  /** a proven upper bound on the count over everything tried */
  readonly bound: number;
  /** how many strips were examined: the measure of work */
  readonly steps: number;
};
