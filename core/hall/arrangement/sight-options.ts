import type { SightOptions } from "../sight/who-cannot-see.ts";
import type { ArrangedMatPlan } from "./arrangement-types.ts";

/**
 * Where the teacher stands in a plan and which way people look: in two banks at the middle, in rings at the centre with
 * everyone's feet to her, else in her zone at the front. To be given to `whoCannotSee`.
 */
export function sightOptions(plan: ArrangedMatPlan): SightOptions {
  switch (plan.arrangement) {
    case "facing":
      return plan.middle === null ? {} : { rowsTowards: "teacher", teacher: plan.middle.teacher };
    case "round":
      return { heads: "far", rowsTowards: "teacher", teacher: plan.centre };
    case "lines":
    case "staggered":
    case "most":
      return {};
  }
}
