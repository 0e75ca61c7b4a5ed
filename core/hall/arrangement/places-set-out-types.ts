import type { SetOutString } from "../mat-plan-types.ts";

/** How to lay mats that stand in no lines: each by its own two figures, those that share one told together. */
export type PlacesSetOut = {
  /** whether every figure is a whole centimetre */
  readonly toTheCentimetre: boolean;
  /** what mats are measured from whose walls all stand at a slant to them; mostly none */
  readonly strings: readonly NamedString[];
  /** in the order of the plan's mats */
  readonly groups: readonly PlaceGroup[];
  /** in metres, one a line, that a person with a tape can follow */
  readonly sentences: readonly string[];
};

/** Mats that lie one way, as far from one wall and measured from the same other wall. Millimetres. */
export type PlaceGroup = {
  /** "front to back" */
  readonly lengthLies: string;
  /** "the left wall", or "string 1" */
  readonly outFrom: string;
  /** from there to the nearest edge of each mat */
  readonly out: number;
  readonly alongFrom: string;
  readonly places: readonly PlaceAlong[];
};

/** The number that a mat has in the plan, and how far its nearest edge lies from the other wall, in millimetres. */
export type PlaceAlong = { readonly number: number; readonly along: number };

/** Stretched between two walls, alongside the mats or square to them. */
export type NamedString = SetOutString & { readonly name: string };
