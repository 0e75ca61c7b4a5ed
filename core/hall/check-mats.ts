import { area, type Polygon } from "#kernels/geometry";
import { type Problem, problem } from "#core/words";
import type { Hall, Mat, MatGaps } from "./hall.ts";

/** 0.20 m: a side shorter than a foot's length is a slip of the unit, and would ask for a million mats. */
export const SHORTEST_MAT = 200;
/** 5 m: wider than any way between mats; more is a slip of the unit. */
export const WIDEST_GAP = 5000;

/** More than any hall holds; a plan of them and its check stay within seconds. */
export const MOST_MATS = 20_000;

/**
 * Problems: "mat-size", "mat-larger-than-floor", "mats-too-many". `floor` is undefined while the floor itself is
 * unsound.
 */
export function matProblems(mat: Mat, gaps: MatGaps, floor: Polygon | undefined): readonly Problem[] {
  const sizes = (["length", "width"] as const).flatMap((side) => sizeProblems(mat[side], side));
  if (sizes.length > 0 || floor === undefined) return sizes;
  const longest = Math.max(mat.length, mat.width);
  if (longest <= widest(floor) && mat.length * mat.width <= area(floor))
    return crowdProblems(mat, gaps, floor);
  const says = `The mat of ${metres(mat.length)} × ${metres(mat.width)} m is larger than the floor.`;
  return [problem("mat-larger-than-floor", "mat", says, "Check the unit: lengths are in metres.")];
}

function sizeProblems(size: number, side: "length" | "width"): readonly Problem[] {
  if (size >= SHORTEST_MAT) return [];
  const says =
    size <= 0 ? `The mat’s ${side} is ${metres(size)} m.` : `The mat’s ${side} is only ${metres(size)} m.`;
  const next = `Give at least ${metres(SHORTEST_MAT)} m; an ordinary mat is 1.83 by 0.61 m.`;
  return [problem("mat-size", `mat.${side}`, says, next)];
}

function crowdProblems(mat: Mat, gaps: MatGaps, floor: Polygon): readonly Problem[] {
  const each = (mat.length + Math.max(0, gaps.end)) * (mat.width + Math.max(0, gaps.side));
  const count = Math.round(area(floor) / each);
  if (count <= MOST_MATS) return [];
  const says = `The floor has the area of ${count} mats with their gaps, more than ${MOST_MATS}.`;
  return [problem("mats-too-many", "mat", says, "Check the unit: lengths are in metres.")];
}

/** The longest straight line between two corners. */
function widest(floor: Polygon): number {
  return floor.reduce(
    (most, [ax, ay]) => Math.max(most, ...floor.map(([bx, by]) => Math.hypot(bx - ax, by - ay))),
    0,
  );
}

const gapWords = { side: "between the long sides", end: "between head and foot", wall: "from the walls" };

/** Problems: "gap-negative", "gap-too-wide". */
export function gapProblems(gaps: MatGaps): readonly Problem[] {
  return (["side", "end", "wall"] as const).flatMap((gap) => {
    const said = `The gap ${gapWords[gap]} is ${metres(gaps[gap])} m`;
    if (gaps[gap] < 0) {
      return [
        problem("gap-negative", `gaps.${gap}`, `${said}, less than nothing.`, "Give 0 or more metres."),
      ];
    }
    if (gaps[gap] <= WIDEST_GAP) return [];
    const next = "Check the unit: gaps are in metres, half a metre is 0.5.";
    return [problem("gap-too-wide", `gaps.${gap}`, `${said}, more than ${metres(WIDEST_GAP)} m.`, next)];
  });
}

/** Problems: "axis-out-of-range", "posted-capacity", "people-not-on-mats". */
export function numberProblems(
  hall: Pick<Hall, "axis" | "lengthAlong" | "postedCapacity" | "peopleNotOnMats">,
): readonly Problem[] {
  const { axis, lengthAlong = 0, postedCapacity, peopleNotOnMats } = hall;
  const turned = axis !== "auto" && Math.abs(axis) > 360;
  const next = "Give a whole number of people, 0 or more.";
  return [
    ...(turned
      ? [
          problem(
            "axis-out-of-range",
            "axis",
            `The axis is ${axis}°.`,
            "Give an angle from 0 to 90, or “auto”.",
          ),
        ]
      : []),
    ...(Math.abs(lengthAlong) > 360 ? [lengthOutOfRange(lengthAlong)] : []),
    ...(postedCapacity === undefined || wholePeople(postedCapacity)
      ? []
      : [problem("posted-capacity", "postedCapacity", `The hall’s own limit is ${postedCapacity}.`, next)]),
    ...(wholePeople(peopleNotOnMats)
      ? []
      : [problem("people-not-on-mats", "peopleNotOnMats", `People not on mats: ${peopleNotOnMats}.`, next)]),
  ];
}

function lengthOutOfRange(degrees: number): Problem {
  const next = "Give an angle from 0 to 180, or leave it out.";
  return problem("axis-out-of-range", "lengthAlong", `The length is to lie at ${degrees}°.`, next);
}

function wholePeople(count: number): boolean {
  return Number.isSafeInteger(count) && count >= 0;
}

function metres(millimetres: number): string {
  return String(millimetres / 1000);
}
