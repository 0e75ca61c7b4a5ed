import { area, boundsOf, type Polygon } from "#kernels/geometry";
import { type Problem, problem } from "#core/words";
import { shapeProblems } from "./check-shape.ts";
import type { FloorDraft } from "./floor-draft.ts";
import { interiorsMeet } from "./interiors-meet.ts";

/** A floor with less than one square metre has no room for a mat: 1.83 × 0.61 m is 1.1 m². */
export const LEAST_FLOOR = 1e6;
/** 200 m, in millimetres: longer than any hall that is hired by the hour. */
export const LONGEST_FLOOR = 200_000;
/** Corners farther than 10 km from [0, 0] come from a map; sums with them lose exact millimetres. */
const FARTHEST = 1e7;
const MOST_SHAPES = 200;

/**
 * Everything that is wrong with a floor and what stands on it. Besides those of `shapeProblems`:
 * "floor-too-small", "floor-too-large", "floor-far-away", "shape-outside", "label-empty", "too-many-shapes".
 */
export function floorProblems(draft: FloorDraft): readonly Problem[] {
  const floor = outlineProblems(draft.outline);
  const within = floor.length === 0 ? draft.outline : undefined;
  return [
    ...floor,
    ...listProblems(draft.fixtures, "fixtures", "fixture", within),
    ...listProblems(draft.keepClear, "keepClear", "keep-clear zone", within),
    ...(draft.teacher === null
      ? []
      : standingProblems(draft.teacher.outline, "teacher.outline", "The teacher’s zone", within)),
  ];
}

function outlineProblems(outline: Polygon): readonly Problem[] {
  const own = shapeProblems(outline, { place: "outline", name: "The floor", side: "wall" });
  if (own.some((it) => it.code === "not-drawn" || it.code === "outline-corners")) return own;
  const size = extentProblem(outline) ?? (own.length === 0 ? areaProblem(outline) : undefined);
  return size === undefined ? own : [...own, size];
}

function extentProblem(outline: Polygon): Problem | undefined {
  const { left, bottom, right, top } = boundsOf(outline);
  const longest = Math.max(right - left, top - bottom);
  if (longest > LONGEST_FLOOR) {
    const says = `The floor is ${Math.round(longest / 1000)} m long, more than 200 m.`;
    return problem("floor-too-large", "outline", says, "Check the unit: lengths are in metres.");
  }
  if (Math.max(Math.abs(left), Math.abs(right), Math.abs(bottom), Math.abs(top)) <= FARTHEST)
    return undefined;
  const says = "The corners are more than 10 km away from [0, 0].";
  return problem("floor-far-away", "outline", says, "Measure from a corner of the hall.");
}

function areaProblem(outline: Polygon): Problem | undefined {
  const squareMetres = area(outline) / 1e6;
  if (area(outline) >= LEAST_FLOOR) return undefined;
  const says = `The floor has ${squareMetres.toFixed(2)} m², less than one square metre.`;
  return problem("floor-too-small", "outline", says, "Check the unit: lengths are in metres.");
}

type Labelled = { readonly label: string; readonly outline: Polygon };

function listProblems(
  list: readonly Labelled[],
  place: "fixtures" | "keepClear",
  word: string,
  within: Polygon | undefined,
): readonly Problem[] {
  if (list.length > MOST_SHAPES) {
    const says = `There are ${list.length} of “${place}”.`;
    return [problem("too-many-shapes", place, says, `Draw at most ${MOST_SHAPES}.`)];
  }
  return list.flatMap(({ label, outline }, index) => {
    const at = `${place}[${index}]`;
    const name = label.trim() === "" ? `The ${word} number ${index + 1}` : `The ${word} “${label.trim()}”`;
    const shape = standingProblems(outline, `${at}.outline`, name, within);
    return label.trim() === "" ? [labelProblem(at, name), ...shape] : shape;
  });
}

function labelProblem(at: string, name: string): Problem {
  return problem(
    "label-empty",
    `${at}.label`,
    `${name} has no name.`,
    "Name it as you would say it: Piano, Stage, Fire exit.",
  );
}

function standingProblems(
  outline: Polygon,
  place: string,
  name: string,
  within: Polygon | undefined,
): readonly Problem[] {
  const own = shapeProblems(outline, { place, name, side: "side" });
  if (own.length > 0 || within === undefined || interiorsMeet(outline, within)) return own;
  const says = `${name} lies wholly outside the floor.`;
  return [problem("shape-outside", place, says, "Move it onto the floor, or take it away.")];
}
