import type { LengthUnits } from "#core/words";
import type { Hall } from "../hall.ts";
import { type ArrangementRow, arrangementRow } from "./arrangement-row.ts";
import { arrangedPlan } from "./arranged-plan.ts";
import { type ArrangedMatPlan, type ArrangementOptions, arrangements } from "./arrangement-types.ts";

export type CompareOptions = ArrangementOptions & {
  /** of the way to a door, in millimetres; 900 unless told */
  readonly wayWidth?: number;
  readonly units?: LengthUnits;
  /** plans that there are already, so that they are not made again: that of `most` after a longer search, say */
  readonly plans?: readonly ArrangedMatPlan[];
};

/**
 * Every arrangement with what there is to judge it by, one after the other: each step of the generator plans one, so
 * that a worker can show how far it is and stop between two. The same hall gives the same rows.
 */
export function* compareArrangements(
  hall: Hall,
  options: CompareOptions = {},
): Generator<ArrangementRow, void, undefined> {
  for (const arrangement of arrangements) {
    const made = options.plans?.find((it) => it.arrangement === arrangement);
    yield arrangementRow(
      hall,
      made ?? arrangedPlan(hall, arrangement, options),
      options.wayWidth,
      options.units,
    );
  }
}
