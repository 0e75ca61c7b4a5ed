import type { ArrangedPlan } from "#kernels/packing";
import type { PlacedMat } from "../mat-plan-types.ts";

export function packedLines(
  lines: ArrangedPlan["lines"],
): readonly { readonly pieces: readonly PlacedMat[] }[] {
  return lines.map((pieces) => ({ pieces }));
}
