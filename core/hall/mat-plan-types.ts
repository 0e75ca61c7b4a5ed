import type { Point } from "#kernels/geometry";

export type PlacedMat = { readonly centre: Point; readonly angle: number };

export type MatPlan = {
  readonly arrangement: "lines";
  readonly count: number;
  readonly bound: number;
  readonly proven: boolean;
  /** degrees from +x, 0 ≤ axis < 90 */
  readonly axis: number;
  readonly mats: readonly PlacedMat[];
  readonly setOut: SetOut;
  /** strips examined */
  readonly steps: number;
};

/** Dimensions for a tape, in millimetres, all whole centimetres when `toTheCentimetre`. */
export type SetOut = {
  readonly toTheCentimetre: boolean;
  /** the wall from which lines are measured and the wall from which mats are measured, in words */
  readonly linesFrom: string;
  readonly matsFrom: string;
  readonly lines: readonly {
    /** from the wall of `linesFrom` to the near edge of the mats of this line */
    readonly from: number;
    /** from the wall of `matsFrom` to the near edge of the first mat */
    readonly first: number;
    /** from the same wall to the centre of each mat of the line */
    readonly centres: readonly number[];
  }[];
  /** the same as sentences, one a line, that a person with a tape can follow */
  readonly sentences: readonly string[];
};

export type CapacityLimit = "floor" | "posted number" | "mats owned" | "own cap" | "insurer";

export type Capacity = {
  readonly capacity: number;
  /** every limit that is equal to the capacity; the floor first */
  readonly limitedBy: readonly CapacityLimit[];
  readonly sentence: string;
};
