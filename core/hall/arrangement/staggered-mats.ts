import { staggeredPlan } from "#kernels/packing";
import { allowedLines } from "../allowed-lines.ts";
import type { Hall } from "../hall.ts";
import { hallFrame } from "../hall-frame.ts";
import { layLines } from "../lay-lines.ts";
import { floorToFill } from "../mat-plan.ts";
import { setOut } from "../set-out.ts";
import type { ArrangementOptions, StaggeredMatPlan } from "./arrangement-types.ts";
import { axesToTry, boundOverAll } from "./axes-to-try.ts";
import { packedLines } from "./packed-lines.ts";

/**
 * The most mats side by side in lines, the places of every other line shifted so that nobody stands straight behind a
 * neighbour. A shift of half a pitch that is no whole centimetre is laid as the whole centimetre beside it.
 */
export function staggeredMats(
  hall: Hall,
  { shift = "half" }: Pick<ArrangementOptions, "shift"> = {},
): StaggeredMatPlan {
  const floor = floorToFill(hall);
  const tried = axesToTry(hall);
  const found = staggeredPlan(floor, hall.mat, hall.gaps, tried.axes, { shift });
  const exact = layLines(hall, packedLines(found.lines), found.direction, hallFrame(hall));
  const laid = allowedLines(hall, floor, exact);
  return {
    arrangement: "staggered",
    ...boundOverAll(hall, tried, found),
    mats: laid.lines.flat(),
    setOut: setOut(hall, laid),
    pitch: found.pitch,
    shift: found.shift,
  };
}
