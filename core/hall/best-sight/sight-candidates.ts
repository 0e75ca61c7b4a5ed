import { formatLength, type LengthUnits, millimetresFromMetres } from "#core/words";
import { arrangedPlan } from "../arrangement/arranged-plan.ts";
import {
  type ArrangedMatPlan,
  type Arrangement,
  type ArrangementOptions,
  arrangements,
} from "../arrangement/arrangement-types.ts";
import { arrangementWords } from "../arrangement/proof-sentence.ts";
import type { Hall } from "../hall.ts";
import { WIDEST_GAP } from "../check-mats.ts";
import { matPlan } from "../mat-plan.ts";

/** A plan to choose mats from. It is allowed in the hall itself, since no gap in it is less than the hall's. */
export type SightCandidate = {
  /** "in staggered lines, 0.70 m between long sides" */
  readonly says: string;
  readonly arrangement: Arrangement;
  readonly plan: () => ArrangedMatPlan;
};

export type SightCandidatesOptions = ArrangementOptions & {
  /** only this one; all unless told */
  readonly arrangement?: Arrangement;
  /** plans that there are already */
  readonly plans?: readonly ArrangedMatPlan[];
  readonly units?: LengthUnits;
};

/** Side gaps wider than the hall's by whole steps, so many at most: fewer mats in a line, and a freer look past them. */
const STEP = 100;
const STEPS = 8;

/** Where there is no zone for the teacher, who sees her is known only where the plan itself has a place for her. */
const placesTeacher: readonly Arrangement[] = ["facing", "round"];

/** Each arrangement as it is, lines also turned by a quarter and staggered by the best shift; then wider side gaps. */
export function sightCandidates(hall: Hall, options: SightCandidatesOptions = {}): readonly SightCandidate[] {
  const known = hall.teacher === null ? placesTeacher : arrangements;
  const wanted = known.filter((it) => options.arrangement === undefined || it === options.arrangement);
  return wanted.flatMap((arrangement) => {
    const made = options.plans?.find((it) => it.arrangement === arrangement);
    const says = arrangementWords[arrangement];
    const plain = { says, arrangement, plan: () => made ?? arrangedPlan(hall, arrangement, options) };
    return [plain, ...variants(hall, arrangement, options)];
  });
}

function variants(
  hall: Hall,
  arrangement: Arrangement,
  options: SightCandidatesOptions,
): readonly SightCandidate[] {
  if (arrangement === "lines") {
    const turned = { says: "in straight lines, the mats turned", arrangement, plan: () => turnedLines(hall) };
    return [turned, ...wider(hall, arrangement, options)];
  }
  if (arrangement !== "staggered") return [];
  const shifted = { ...options, shift: "best" as const };
  const says = "in lines staggered by the shift that holds most";
  return [
    { says, arrangement, plan: () => arrangedPlan(hall, arrangement, shifted) },
    ...wider(hall, arrangement, options),
  ];
}

function turnedLines(hall: Hall): ArrangedMatPlan {
  const plan = matPlan(hall);
  const [first] = plan.mats;
  return first === undefined ? plan : matPlan({ ...hall, lengthAlong: (first.angle + 90) % 180 });
}

function wider(
  hall: Hall,
  arrangement: Arrangement,
  options: SightCandidatesOptions,
): readonly SightCandidate[] {
  const sides = Array.from({ length: STEPS }, (_, index) => hall.gaps.side + (index + 1) * STEP);
  return sides
    .filter((side) => side <= WIDEST_GAP)
    .map((millimetres) => {
      const side = millimetresFromMetres(millimetres / 1000);
      const changed = { ...hall, gaps: { ...hall.gaps, side } };
      return {
        says: `${arrangementWords[arrangement]}, ${formatLength(side, options.units ?? "metric")} between long sides`,
        arrangement,
        plan: () => arrangedPlan(changed, arrangement, options),
      };
    });
}
