import type { CountedPlan, Gain, Hall, MatPlan } from "#core/hall";
import type { LengthUnits } from "#core/words";

export type GainsJob = { readonly hall: Hall; readonly plan: CountedPlan; readonly units: LengthUnits };

/** A list is begun and then asked for change by change, so that nothing has to be interrupted to stop it. */
export type GainsRequest =
  | { readonly id: number; readonly kind: "begin"; readonly job: GainsJob }
  | { readonly id: number; readonly kind: "next" };

export type GainsReply = { readonly id: number } & (
  | { readonly kind: "begun"; readonly total: number; readonly leftOut: readonly string[] }
  | { readonly kind: "gain"; readonly gain: Gain<MatPlan> }
  | { readonly kind: "done" }
  | { readonly kind: "failed"; readonly says: string }
);
