import { bad, formatLength, good, type LengthUnits, problem, type Problem, type Result } from "#core/words";
import type { Polygon } from "#kernels/geometry";
import type { CountedPlan } from "../gain/gain-types.ts";
import type { Hall, KeepClear } from "../hall.ts";
import { hallFrame } from "../hall-frame.ts";
import type { NamedMats } from "../mat-in-words.ts";
import { placeWords } from "../plan-in-words.ts";
import { doorProblems, widthProblems } from "./clear-way.ts";
import { placeCandidates } from "./place-candidates.ts";

/** A bay for a wheelchair or a chair, in millimetres, either way round. */
export type Bay = { readonly length: number; readonly width: number };

export type PlaceOptions = {
  /** 900 unless told */
  readonly wayWidth?: number;
  /** how many candidates are solved at most; 6 unless told */
  readonly tries?: number;
  /** what stands on the plan; "Place for a wheelchair or a chair" unless told */
  readonly label?: string;
  /** of the words; metric unless told */
  readonly units?: LengthUnits;
};

export type WithPlace<Plan extends CountedPlan> = {
  /** with the bay and its way as zones to keep clear, and one person more who is not on a mat */
  readonly hall: Hall;
  readonly plan: Plan;
  /** mats fewer than in the plan without the place; below 0 where there are more */
  readonly lost: number;
  readonly bay: Polygon;
  readonly way: readonly Polygon[];
  readonly sentence: string;
};

/**
 * The hall with a larger bay and a way from its middle to a door that mats keep clear of. Of the places that displace
 * the fewest mats of the present plan the best few are solved again with `planOf`, and the one with the most mats is
 * taken, of equals the first. That is the best of those tried and is not proven to be the best there can be.
 * Problems: those of `clearWay`; "place-size" for a side not from 0.80 to 5 m; "place-no-room" where no bay has a way.
 */
export function withPlace<Plan extends CountedPlan>(
  hall: Hall,
  bay: Bay,
  plan: NamedMats & CountedPlan,
  planOf: (hall: Hall) => Plan,
  options: PlaceOptions = {},
): Result<WithPlace<Plan>> {
  const {
    wayWidth = 900,
    tries = 6,
    label = "Place for a wheelchair or a chair",
    units = "metric",
  } = options;
  const said = (millimetres: number) => formatLength(millimetres, units);
  const problems = [...sizeProblems(bay, said), ...widthProblems(wayWidth, units), ...doorProblems(hall)];
  if (problems.length > 0) return bad(...problems);
  let best: WithPlace<Plan> | undefined;
  for (const { bay: outline, way } of placeCandidates(hall, bay, plan.mats, wayWidth, tries)) {
    const zones = zonesOf(hall, label, outline, way);
    const changed = {
      ...hall,
      keepClear: [...hall.keepClear, ...zones],
      peopleNotOnMats: hall.peopleNotOnMats + 1,
    };
    const solved = planOf(changed);
    if (best !== undefined && solved.count <= best.plan.count) continue;
    const lost = plan.count - solved.count;
    const sentence = sentenceOf(hall, bay, outline, said(wayWidth), solved.count, lost, said);
    best = { hall: changed, plan: solved, lost, bay: outline, way, sentence };
  }
  return best === undefined ? bad(noRoom(bay, wayWidth, said)) : good(best);
}

/** The bay and the legs of its way, numbered after the places that the hall has already. */
function zonesOf(
  { keepClear }: Hall,
  label: string,
  bay: Polygon,
  way: readonly Polygon[],
): readonly KeepClear[] {
  const number = 1 + Math.max(0, ...keepClear.map((it) => it.place?.number ?? 0));
  return [
    { label, outline: bay, place: { number, part: "bay" } },
    ...way.map(
      (outline): KeepClear => ({
        label: `Way to: ${label}`,
        outline,
        place: { number, part: "way" },
      }),
    ),
  ];
}

type Said = (millimetres: number) => string;

function sizeProblems({ length, width }: Bay, said: Said): readonly Problem[] {
  return [length, width].flatMap((side, index) => {
    if (side >= 800 && side <= 5000) return [];
    const says = Number.isFinite(side)
      ? `The place is ${said(side)} ${index === 0 ? "long" : "wide"}.`
      : "A side of the place is not a number.";
    const next = `Give each side from ${said(800)} to ${said(5000)}; ${said(1500)} by ${said(2000)} is room for a wheelchair to turn.`;
    return [problem("place-size", index === 0 ? "bay.length" : "bay.width", says, next)];
  });
}

function noRoom({ length, width }: Bay, wayWidth: number, said: Said): Problem {
  const size = `${said(length)} by ${said(width)}`;
  const says = `There is no place of ${size} with a way ${said(wayWidth)} wide to a door.`;
  return problem(
    "place-no-room",
    "",
    says,
    "Move what stands on the floor, or try a smaller place or another door.",
  );
}

function sentenceOf(
  hall: Hall,
  bay: Bay,
  outline: Polygon,
  wide: string,
  count: number,
  lost: number,
  said: Said,
): string {
  const where = placeWords(outline, hall, hallFrame(hall));
  const size = `${said(bay.length)} by ${said(bay.width)}`;
  const change = lost === 0 ? "no fewer than before" : `${Math.abs(lost)} ${lost > 0 ? "fewer" : "more"}`;
  return `A place of ${size} ${where}, with a way ${wide} wide to a door: ${count} ${count === 1 ? "mat fits" : "mats fit"} beside it, ${change}.`;
}
