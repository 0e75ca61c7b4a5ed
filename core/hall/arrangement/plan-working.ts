import { formatLength, type LengthUnits } from "#core/words";
import type { Hall } from "../hall.ts";
import type { ArrangedMatPlan } from "./arrangement-types.ts";
import { directionsInWords } from "./axes-to-try.ts";
import { proofSentence } from "./proof-sentence.ts";

/** How a plan came about and what its bound speaks of, so that somebody can argue with it. A sentence each. */
export function planWorking(
  hall: Hall,
  plan: ArrangedMatPlan,
  units: LengthUnits = "metric",
): readonly string[] {
  const said = (millimetres: number): string => formatLength(millimetres, units);
  return [
    `A mat of ${said(hall.mat.length)} by ${said(hall.mat.width)}, at least ${said(hall.gaps.side)} between long sides, ${said(hall.gaps.end)} between head and foot and ${said(hall.gaps.wall)} from walls and what stands on the floor.`,
    ...triedSentences(hall, plan, said),
    proofSentence(plan),
  ];
}

type Said = (millimetres: number) => string;

function triedSentences(hall: Hall, plan: ArrangedMatPlan, said: Said): readonly string[] {
  switch (plan.arrangement) {
    case "lines":
      return [
        `Tried: lines ${everyDirection(hall)} and across, mats side by side and end to end${hall.lengthAlong === undefined ? "" : " with their length the one way it has to lie"}, lines at every distance.`,
      ];
    case "staggered":
      return [
        `Tried: lines ${directionsInWords(hall)} and across, mats side by side ${said(plan.pitch)} from centre to centre, every other line shifted by ${exactly(plan.shift)}, first places on whole centimetres. A place that is not free stays empty.`,
      ];
    case "facing":
      return [
        `Tried: two banks of lines ${directionsInWords(hall)} and across, with heads to a middle ${said(plan.middleWidth)} wide that lies on whole centimetres.`,
      ];
    case "round":
      return [
        "Tried: rings on whole centimetres around this centre, with mats at every half degree. Another centre may hold more.",
        "The bound is for this centre and for mats at any angle and distance, each pointing at it: so many circles around it that every mat crosses one, and no more mats on a circle than its open part is long.",
      ];
    case "most":
      return [
        `Tried: mats ${directionsInWords(hall)} or across, each wherever there is room, from the best lines on.`,
        "The bound comes from weights on the floor: every mat that could lie there holds a weight of one at least.",
      ];
  }
}

/** Shifts may be half millimetres. */
function exactly(millimetres: number): string {
  return `${millimetres / 1000} m`;
}

/** Lines are quick enough to be tried along every wall of any floor. */
function everyDirection({ axis, lengthAlong }: Pick<Hall, "axis" | "lengthAlong">): string {
  const settled = lengthAlong ?? axis;
  return settled === "auto" ? "along every wall" : `at ${settled}° of the drawing`;
}
