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
export type Line = {
  /** from the plan's reference to the near edge of the line, square to the lines, in millimetres */
  readonly offset: number;
  /** from the plan's reference along the line to the near edge of each rectangle, in millimetres */
  readonly starts: readonly number[];
  readonly pieces: readonly Placed[];
};

/**
 * Distances are measured from the reference: the least x and the least y of the outline's corners once the
 * hall is turned by −direction, so that the lines run towards +x.
 */
export type LinesPlan = {
  /** degrees from +x of the frame the plan is aligned to, 0 ≤ axis < 90 */
  readonly axis: number;
  /** degrees from +x of the way the lines run: the axis or the axis + 90 */
  readonly direction: number;
  /** whether the length of a rectangle lies along the lines ("end to end") or across them ("side by side") */
  readonly along: "length" | "width";
  /** in order of offset */
  readonly lines: readonly Line[];
  /** parts of the floor that have lines of their own: 1 when the lines run through */
  readonly wings: number;
  readonly count: number;
  /**
   * no plan holds more whose lines run through, on any axis asked for, nor any with wings that was followed
   * to its end
   */
  readonly bound: number;
  /** whether count and bound meet and no axis was left out */
  readonly proven: boolean;
  /**
   * Every offset and start is a whole number of these: 10 or 1 millimetres, or 0 when only exact positions
   * keep the count.
   */
  readonly grid: 10 | 1 | 0;
  /** how many strips were examined: the measure of work */
  readonly steps: number;
};

export type LinesOptions = {
  /** strips to examine at most before the plan is returned as it stands, unproven */
  readonly steps?: number;
  /** how the length of every rectangle lies to the axis; whichever holds more unless told */
  readonly length?: "along" | "across";
};
