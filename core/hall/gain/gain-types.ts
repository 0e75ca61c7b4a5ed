import type { Hall } from "../hall.ts";
import type { PlacedMat } from "../mat-plan-types.ts";

/** One thing done differently. Millimetres; degrees from +x; a fixture by its index in the hall. */
export type Change =
  | { readonly kind: "side gap" | "end gap" | "wall gap"; readonly from: number; readonly to: number }
  /** how the length of the mats would lie */
  | { readonly kind: "mats turned"; readonly degrees: number }
  | { readonly kind: "axis"; readonly degrees: number }
  | { readonly kind: "fixture gone"; readonly fixture: number }
  | { readonly kind: "teacher halved"; readonly depth: number };

/** A change with the hall as it would be: taking that hall tries it, keeping the old one takes it back. */
export type Trial = {
  readonly change: Change;
  /** "5 cm less between long sides (0.45 m)" */
  readonly says: string;
  readonly hall: Hall;
};

/** What a plan has to tell to be compared. */
export type CountedPlan = { readonly count: number; readonly bound: number; readonly proven: boolean };

/** What it tells besides where its mats can be turned: a plan in lines of which the first mat says how all lie. */
export type TurnablePlan = {
  readonly arrangement?: string;
  readonly mats?: readonly Pick<PlacedMat, "angle">[];
};

export type Gain<Plan extends CountedPlan> = Trial & {
  readonly plan: Plan;
  /** mats more than before; fewer are below 0 */
  readonly gain: number;
  /** "5 cm less between long sides (0.45 m): 28 mats, 4 more." */
  readonly sentence: string;
};

export type Trials = {
  readonly trials: readonly Trial[];
  /** what was not tried and why, a sentence each */
  readonly leftOut: readonly string[];
};
