import type { Point } from "#kernels/geometry";
import type { Solver } from "#kernels/search";
import type { MatPlan, PlacedMat, SetOut } from "../mat-plan-types.ts";
import type { PlacesSetOut } from "./places-set-out-types.ts";
import type { RingSetOut } from "./ring-set-out-types.ts";

/**
 * How mats may stand: in straight lines; in lines of which every other one is shifted; in two banks that face a clear
 * middle; in rings with the feet to the teacher; or wherever there is room, along the walls or across them.
 */
export const arrangements = ["lines", "staggered", "facing", "round", "most"] as const;
export type Arrangement = (typeof arrangements)[number];

/** What every plan tells: 24 mats, of which a bound of 26 says that two more at most could fit this way. */
export type Planned = {
  readonly count: number;
  /** no plan of this arrangement holds more, in the sense that `planWorking` tells */
  readonly bound: number;
  /** whether count and bound meet */
  readonly proven: boolean;
  readonly mats: readonly PlacedMat[];
};

/** Mats line after line in the order of `setOut.lines`, and in each line in the order of its centres. */
export type StaggeredMatPlan = Planned & {
  readonly arrangement: "staggered";
  readonly setOut: SetOut;
  /** millimetres from mat to mat in a line, and between the places of neighbouring lines */
  readonly pitch: number;
  readonly shift: number;
};

export type FacingMatPlan = Planned & {
  readonly arrangement: "facing";
  readonly setOut: SetOut;
  /** what stays clear between the banks; null for a plan without a mat */
  readonly middle: Middle | null;
  /** how wide it was to be, in millimetres */
  readonly middleWidth: number;
};

/** Millimetres: a strip right through the hall's hull. */
export type Middle = {
  readonly outline: readonly Point[];
  /** so many lines of the set-out lie before it */
  readonly afterLine: number;
  /** from `setOut.linesFrom` to its nearer edge */
  readonly from: number;
  readonly width: number;
  /** half-way along the part of it that lies inside the walls: where the teacher is taken to stand */
  readonly teacher: Point;
};

/** Mats ring after ring from the inside, in each round from the front in the order of `rings`. */
export type RoundMatPlan = Planned & {
  readonly arrangement: "round";
  readonly ringSetOut: RingSetOut;
  /** where the teacher is taken to be, in millimetres */
  readonly centre: Point;
};

/** Mats in the order of `places`. */
export type MostMatPlan = Planned & {
  readonly arrangement: "most";
  readonly axis: number;
  readonly placesSetOut: PlacesSetOut;
};

/** Those with lines that a tape follows. */
export type LinedMatPlan = MatPlan | StaggeredMatPlan | FacingMatPlan;

export type ArrangedMatPlan = MatPlan | StaggeredMatPlan | FacingMatPlan | RoundMatPlan | MostMatPlan;

export type ArrangementOptions = {
  /** `facing`: the width of the clear middle, in millimetres; the hall’s, or 2000, unless told */
  readonly middle?: number;
  /** `round`: where the teacher is, in millimetres; the hall’s, the centre of her zone or the middle of the free floor unless told */
  readonly centre?: Point;
  /** `round`: from there to the nearest feet, in millimetres; 1000 unless told */
  readonly least?: number;
  /** `staggered`: by half a pitch, or by the whole centimetres that hold most; "half" unless told */
  readonly shift?: "half" | "best";
  /** `most`: steps of a few milliseconds before it is left as it stands; 300 unless told */
  readonly steps?: number;
  /** `most`: closes what the weights leave open; without one some bounds stay open */
  readonly solver?: Solver;
  /** `most`: the same seed gives the same plan; 1 unless told */
  readonly seed?: number;
};
