import type { ArrangedMatPlan, Arrangement, Hall } from "#core/hall";

/** Which mats are asked for: a sound hall and how they stand. */
export type FitJob = { readonly hall: Hall; readonly arrangement: Arrangement };

export type FitRequest =
  | { readonly kind: "fit"; readonly id: number; readonly job: FitJob }
  /** a search that goes on rests, or goes on again */
  | { readonly kind: "rest" | "go on"; readonly id: number };

/** How far a search for the most has come; it may get better after the first answer. */
export type Search = {
  readonly state: "goes on" | "rests" | "finished";
  /** "24 mats so far, and no more than 26 can fit." */
  readonly sentence: string;
  readonly whatItIsDoing: string;
};

export type FitAnswer =
  | {
      readonly id: number;
      readonly ok: true;
      readonly plan: ArrangedMatPlan;
      readonly milliseconds: number;
      /** null for an arrangement whose plan is final at once */
      readonly search: Search | null;
    }
  | { readonly id: number; readonly ok: false; readonly says: string };
