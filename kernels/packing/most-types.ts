import type { Solver } from "#kernels/search";
import type { Placed } from "./packing-types.ts";

/** Rectangles along an axis or across it, wherever the floor allows. */
export type MostPlan = {
  /** degrees from +x, 0 ≤ axis < 90: each rectangle lies at it or at a right angle to it */
  readonly axis: number;
  readonly pieces: readonly Placed[];
  readonly count: number;
  /** no plan along any of the axes asked for holds more */
  readonly bound: number;
  /** whether count and bound meet */
  readonly proven: boolean;
};

export type MostOptions = {
  /** of the generator of chances; the same seed gives the same plan */
  readonly seed?: number;
  /** closes what the weights leave open, where it can; without one the bound rests on the weights alone */
  readonly solver?: Solver;
};
