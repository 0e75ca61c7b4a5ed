import { formatLength, type LengthUnits } from "#core/words";
import type { ArrangedMatPlan } from "./arrangement/arrangement-types.ts";
import { proofSentence } from "./arrangement/proof-sentence.ts";
import type { Hall } from "./hall.ts";
import type { SetOut } from "./mat-plan-types.ts";

/** How many mats lie in a plan, how they lie, with what gaps, and whether more could: a sentence each. */
export function laidWords(
  hall: Pick<Hall, "mat" | "gaps">,
  plan: ArrangedMatPlan,
  units: LengthUnits,
): readonly string[] {
  const said = (millimetres: number): string => formatLength(millimetres, units);
  const size = `${said(hall.mat.length)} by ${said(hall.mat.width)}`;
  if (plan.count === 0) return [`No mat of ${size} fits.`];
  const mats = plan.count === 1 ? `1 mat of ${size} lies` : `${plan.count} mats of ${size} lie`;
  return [
    `${mats} ${howTheyLie(plan, said)}.`,
    `Between long sides there are at least ${said(hall.gaps.side)}, between head and foot ${said(hall.gaps.end)}, to walls and what stands on the floor ${said(hall.gaps.wall)}.`,
    proofSentence(plan),
  ];
}

function howTheyLie(plan: ArrangedMatPlan, said: (millimetres: number) => string): string {
  switch (plan.arrangement) {
    case "lines":
      return `in ${linesWords(plan.setOut, "")}`;
    case "staggered":
      return `in ${linesWords(plan.setOut, "staggered ")}`;
    case "facing":
      return `in two banks that face a middle of ${said(plan.middleWidth)} kept clear, altogether ${linesWords(plan.setOut, "")}`;
    case "round":
      return `with the feet to the teacher, in ${rowsWords(
        plan.ringSetOut.rings.map((it) => it.marks.length),
        "ring",
      )} from the inside`;
    case "most":
      return "along the walls or across them, each where the list has it";
  }
}

function linesWords({ lines, lengthLies, linesFrom }: SetOut, kind: string): string {
  const counts = lines.map((line) => line.centres.length);
  return `${rowsWords(counts, `${kind}line`)}, counted from ${linesFrom}, with the length ${lengthLies}`;
}

/** "4 lines of 6", "3 rings of 7, 7 and 4". */
function rowsWords(counts: readonly number[], row: string): string {
  const [first = 0] = counts;
  if (counts.length === 1) return `1 ${row} of ${first}`;
  if (counts.every((count) => count === first)) return `${counts.length} ${row}s of ${first}`;
  return `${counts.length} ${row}s of ${counts.slice(0, -1).join(", ")} and ${counts.at(-1)}`;
}
