import type { Point } from "#kernels/geometry";

export type PlacedMat = {
  readonly centre: Point;
  /** of the mat's length, degrees from +x, 0 ≤ angle < 180 */
  readonly angle: number;
};

export type MatPlan = {
  readonly arrangement: "lines";
  readonly count: number;
  readonly bound: number;
  readonly proven: boolean;
  /** degrees from +x, 0 ≤ axis < 90 */
  readonly axis: number;
  /** line after line in the order of `setOut.lines`, and in each line in the order of its centres */
  readonly mats: readonly PlacedMat[];
  readonly setOut: SetOut;
  /** strips examined */
  readonly steps: number;
};

/** Dimensions for a tape, in millimetres, all whole centimetres when `toTheCentimetre`. */
export type SetOut = {
  readonly toTheCentimetre: boolean;
  /** what lines are measured from, square to them, in words: "the front wall" */
  readonly linesFrom: string;
  /** what the mats of the first line are measured from, along the line, in words; `lines` tell for each */
  readonly matsFrom: string;
  /** whether some line comes to a wall at a slant, so that it matters to measure along the line's near edge */
  readonly matsAlongEdge: boolean;
  /** how the length of each mat lies, in words: "front to back" */
  readonly lengthLies: string;
  /** the near edge of the first line as a string between two walls; null where a wall runs along the lines */
  readonly string: SetOutString | null;
  readonly lines: readonly SetOutLine[];
  /** the same as sentences, one a line, in metres, that a person with a tape can follow */
  readonly sentences: readonly string[];
};

export type SetOutLine = {
  /** from `linesFrom` to the near edge of the mats of this line */
  readonly from: number;
  /** what the mats of this line are measured from */
  readonly matsFrom: string;
  /** from there to the near edge of the first mat */
  readonly first: number;
  /** from there to the centre of each mat of the line */
  readonly centres: readonly number[];
};

export type SetOutString = { readonly from: StringEnd; readonly to: StringEnd };
/** So many millimetres along the wall from its corner. */
export type StringEnd = { readonly wall: string; readonly corner: string; readonly distance: number };

export type CapacityLimit = "floor" | "posted number" | "mats owned" | "own cap" | "insurer";

export type Capacity = {
  readonly capacity: number;
  /** every limit that is equal to the capacity; the floor first */
  readonly limitedBy: readonly CapacityLimit[];
  readonly sentence: string;
};
