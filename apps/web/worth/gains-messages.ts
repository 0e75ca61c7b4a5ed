import type { Gain, Hall, ArrangedMatPlan } from "#core/hall";
import type { LengthUnits } from "#core/words";

export type GainsJob = { readonly hall: Hall; readonly plan: ArrangedMatPlan; readonly units: LengthUnits };

/** A list is begun and then asked for change by change, so that nothing has to be interrupted to stop it. */
export type GainsRequest =
  | { readonly id: number; readonly kind: "begin"; readonly job: GainsJob }
  | { readonly id: number; readonly kind: "next" };

export type GainsReply = { readonly id: number } & (
  | { readonly kind: "begun"; readonly total: number; readonly leftOut: readonly string[] }
  | { readonly kind: "gain"; readonly gain: Gain<ArrangedMatPlan> }
  | { readonly kind: "done" }
  | { readonly kind: "failed"; readonly says: string }
);
