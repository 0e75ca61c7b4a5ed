import type { Polygon } from "#kernels/geometry";
import type { MeasureKind } from "./measured-walls.ts";

export type ClosedWalls = {
  /** the outline that fits all measures best: first corner at [0, 0], first wall along +x, whole millimetres */
  readonly outline: Polygon;
  /** the same without the most likely wrong measure; null where none is likely wrong */
  readonly outlineWithout: Polygon | null;
  /** millimetres from where the last wall ends to where the first began, walked as measured */
  readonly closingError: number;
  /** whether that is no more than 50 mm and no measure stands out */
  readonly closes: boolean;
  /** the most likely first; more than one where the measures cannot tell them apart */
  readonly suspects: readonly Suspect[];
  /** whether nothing stands out any more without the first suspect */
  readonly settled: boolean;
  /**
   * degrees by which some corner is off if no length is wrong; null where the lengths contradict one another all the
   * same, and where all closes. The explanation that is taken where there is no suspect.
   */
  readonly notSquareBy: number | null;
  /** corners whose turn nobody told and the lengths leave open by more than 2° */
  readonly open: readonly number[];
  /** whether nothing checks the lengths: as many were measured as the shape needs, and not one more */
  readonly unchecked: boolean;
  /** which diagonal to measure next; null where none is needed or none can be taped */
  readonly next: NextDiagonal | null;
  readonly measures: readonly AdjustedMeasure[];
  readonly sentences: readonly string[];
};

/** Millimetres, or degrees for a turn. */
export type Suspect = {
  readonly kind: MeasureKind;
  readonly index: number;
  /** "the wall B–C", "the diagonal A–C", "the corner B" */
  readonly name: string;
  readonly measured: number;
  /** what the other measures say it is */
  readonly others: number;
  /** measured less what the others say */
  readonly offBy: number;
  readonly says: string;
};

export type AdjustedMeasure = {
  readonly kind: MeasureKind;
  readonly index: number;
  readonly name: string;
  /** null for a turn that nobody told */
  readonly measured: number | null;
  /** in the outline */
  readonly adjusted: number;
  /** a slip smaller than this would most likely not be noticed; null where nothing checks the measure */
  readonly noticedFrom: number | null;
};

/** A diagonal worth measuring. */
export type NextDiagonal = {
  readonly from: number;
  readonly to: number;
  /** "the diagonal A–C" */
  readonly name: string;
  /** millimetres in the outline as it is now */
  readonly expected: number;
  /** the shape is open without it, several measures may be wrong, or nothing checks the corners yet */
  readonly why: "pin" | "tell" | "check";
  readonly says: string;
};
