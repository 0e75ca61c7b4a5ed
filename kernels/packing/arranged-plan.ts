import type { Placed } from "./packing-types.ts";

/** A plan of one of the arrangements that are not plain lines. */
export type ArrangedPlan = {
  /** degrees from +x of the way the lines run; for rings the direction of the first ring's first rectangle */
  readonly direction: number;
  /** per line, bank by bank, or per ring from the inside */
  readonly lines: readonly (readonly Placed[])[];
  readonly count: number;
  /** no plan of the arrangement, as its function describes it, holds more */
  readonly bound: number;
  readonly proven: boolean;
};
