import type { ArrangedPlan } from "#kernels/packing";
import type { Hall } from "../hall.ts";
import type { PlacedMat } from "../mat-plan-types.ts";

/** The axes that a hall asks for, as the packing kernel takes them. */
export function axesOf({ axis }: Pick<Hall, "axis">): readonly number[] | "auto" {
  return axis === "auto" ? axis : [axis];
}

export function packedLines(
  lines: ArrangedPlan["lines"],
): readonly { readonly pieces: readonly PlacedMat[] }[] {
  return lines.map((pieces) => ({ pieces }));
}
