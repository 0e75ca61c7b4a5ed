import type { Point } from "#kernels/geometry";
import type { ArrangedMatPlan, CapacityLimits, Hall } from "#core/hall";
import type { LengthUnits, Locale } from "#core/words";

export type HallSheetInput = {
  readonly hall: Hall;
  readonly address: string | null;
  /** for one class with mats of its own; null for the hall */
  readonly className: string | null;
  /** of any arrangement */
  readonly plan: ArrangedMatPlan;
  /** besides the hall's posted number: mats there are, her own cap, her insurer's */
  readonly limits: CapacityLimits;
  /** millimetres that every way to a door is to have; null where nobody has set it */
  readonly wayWidth: number | null;
  readonly units: LengthUnits;
  readonly locale: Locale;
  readonly madeOn: { readonly iso: string; readonly words: string };
  /** "version 7 of the hall’s measures" */
  readonly madeFrom: string;
};

/** What the paper says, in the order in which it says it. */
export type HallSheet = {
  readonly title: string;
  /** under the title: the class, the address */
  readonly under: readonly string[];
  /** the posted number first, then the mats, then how many of them to lay */
  readonly lead: readonly string[];
  readonly hall: Hall;
  readonly plan: ArrangedMatPlan;
  /** mats that stand in the way of another one's way to a door, by index */
  readonly inTheWay: readonly number[];
  /** the middle lines of the ways to the doors, in hall millimetres; a piece that several share once */
  readonly ways: readonly (readonly [Point, Point])[];
  readonly named: NamedShapes;
  readonly sections: readonly SheetSection[];
  /** who made it, when and from what; the scale is the layout's to add */
  readonly foot: string;
  readonly units: LengthUnits;
  readonly locale: Locale;
  readonly madeOn: string;
};

export type SheetSection = {
  readonly title: string;
  readonly items: readonly string[];
  /** lines to write on, each after its words */
  readonly blanks?: readonly string[];
};

/** Short names by which the drawing and the lists speak of the same thing, in the order of the hall's own lists. */
export type NamedShapes = { readonly fixtures: readonly string[]; readonly keepClear: readonly string[] };
