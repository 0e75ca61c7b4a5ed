import type { Hall } from "../hall.ts";
import { matPlan } from "../mat-plan.ts";
import type { ArrangedMatPlan, Arrangement, ArrangementOptions } from "./arrangement-types.ts";
import { facingMats } from "./facing-mats.ts";
import { advanceMostMats, mostMatPlan, startMostMats } from "./most-mats.ts";
import { roundMats } from "./round-mats.ts";
import { staggeredMats } from "./staggered-mats.ts";

/** Steps of `most` when nobody says: a second or two. */
const STEPS = 300;

/**
 * The plan of an arrangement on a sound hall: how many mats, how many there could be, where each lies and how to lay
 * them with a tape. Millimetres and degrees; the methods are the packing kernel's. Every plan is checked before it
 * is given; throws where one breaks its own rules, which would be a fault of ours, and on options that are no lengths.
 */
export function arrangedPlan(
  hall: Hall,
  arrangement: Arrangement,
  options: ArrangementOptions = {},
): ArrangedMatPlan {
  switch (arrangement) {
    case "lines":
      return matPlan(hall);
    case "staggered":
      return staggeredMats(hall, options);
    case "facing":
      return facingMats(hall, options);
    case "round":
      return roundMats(hall, options);
    case "most":
      return mostMatPlan(advanceMostMats(startMostMats(hall, options), options.steps ?? STEPS));
  }
}
