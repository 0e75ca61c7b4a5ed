// Example: at Tithe Barn Hall three walls are typed and the fourth is begun; the phone goes into a pocket, the page is
// thrown away, and in the evening "8.0" still stands in the fourth box.
// Invariant: what is typed is kept as it was typed, readable or not; lengths are read only to draw and to close.
import type { HallDocument } from "#core/hall";
import type { LengthUnits } from "#core/words";
import type { Point } from "#kernels/geometry";

/** A length as it was typed; `inches` only where feet are the habit. */
export type TypedLength = { readonly length: string; readonly inches: string };

/** Which way one turns at the end of a wall; `degrees` as typed, empty for an angle that is not known. */
export type TypedTurn = {
  readonly turn: "left" | "right" | "left-other" | "right-other";
  readonly degrees: string;
};

export type TypedWall = TypedLength & TypedTurn;
export type TypedDiagonal = TypedLength & { readonly from: number; readonly to: number };

export type Tape = {
  readonly walls: readonly TypedWall[];
  /** the wall that was taken away last, to be put back */
  readonly gone: { readonly index: number; readonly wall: TypedWall } | null;
  /** the wall that is being entered; null where none is */
  readonly at: number | null;
  /** whether the last wall was said to be the last */
  readonly done: boolean;
  readonly diagonals: readonly TypedDiagonal[];
  /** corners that come out nearly square are drawn square */
  readonly square: boolean;
  /** drawn without the measure that is likely wrong */
  readonly without: boolean;
};

/** A distance on the picture: its ends in picture points. */
export type TypedDistance = TypedLength & { readonly from: Point | null; readonly to: Point | null };

export type Trace = {
  /** of the picture as it is kept on the device; null until one is chosen */
  readonly size: { readonly width: number; readonly height: number } | null;
  readonly known: TypedDistance;
  readonly check: TypedDistance;
  readonly corners: readonly Point[];
  readonly square: boolean;
};

/** What "put back" brings back: the floor as it was before an outline from here took its place. */
export type FloorBefore = Pick<HallDocument, "outline" | "fixtures" | "keepClear" | "teacher">;

/** One hall being measured, kept on this device only. */
export type Measuring = {
  readonly way: "tape" | "picture";
  /** the hall whose floor it is; null for a hall that does not exist yet */
  readonly hall: string | null;
  /** of a new hall */
  readonly name: string;
  /** those in which lengths were typed, whatever the practice changes to later */
  readonly units: LengthUnits;
  /** YYYY-MM-DD */
  readonly begun: string;
  readonly tape: Tape;
  readonly trace: Trace;
  /** null until an outline was used, or after it was put back */
  readonly before: FloorBefore | null;
  readonly used: boolean;
};

export const blankWall: TypedWall = { length: "", inches: "", turn: "left", degrees: "" };
const noDistance: TypedDistance = { length: "", inches: "", from: null, to: null };

export function newMeasuring(start: Pick<Measuring, "way" | "hall" | "name" | "units" | "begun">): Measuring {
  return {
    ...start,
    tape: { walls: [blankWall], gone: null, at: 0, done: false, diagonals: [], square: true, without: false },
    trace: { size: null, known: noDistance, check: noDistance, corners: [], square: true },
    before: null,
    used: false,
  };
}
