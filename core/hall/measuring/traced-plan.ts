// Example: on a photograph of a plan the wall A–B runs over 800 picture points and is 8.00 m long: a point is 10 mm,
// a corner marked two points out is 20 mm out, and a wall of 12 m may ordinarily be off by 0.05 m.
// Invariant: the outline has the corners that were marked, in their order, and its lengths rest on one distance only.
import type { Point, Polygon } from "#kernels/geometry";
import { bad, formatLength, good, type LengthUnits, type Problem, type Result } from "#core/words";
import { floorProblems } from "../check-floor.ts";
import { floorDraft } from "../floor-draft.ts";
import { wallsOf } from "../floor-walls.ts";
import { straightened } from "./straightened.ts";
import { traceProblems } from "./trace-problems.ts";

/** Two marks on a picture, in its points from the top left, and how far apart they are in the hall, millimetres. */
export type KnownDistance = { readonly from: Point; readonly to: Point; readonly length: number };

export type Tracing = {
  /** in picture points from the top left, y down, in order round the hall */
  readonly corners: readonly Point[];
  readonly known: KnownDistance;
  /** another known distance, along the other side of the plan if possible */
  readonly check: KnownDistance | null;
  /** degrees from square within which a corner is made square; 0 for none */
  readonly squareWithin: number;
};

export type TracedPlan = {
  /** whole centimetres, y up, its bottom left at [0, 0] */
  readonly outline: Polygon;
  /** millimetres of hall to a point of the picture */
  readonly scale: number;
  /** millimetres by which the longest and the shortest wall may ordinarily be off */
  readonly longestOff: number;
  readonly shortestOff: number;
  /** what the picture makes of the second distance; null without one */
  readonly check: { readonly found: number; readonly length: number; readonly offBy: number } | null;
  readonly sentences: readonly string[];
};

/** A mark is set within two points of the picture: a guess, from how thick the walls of a plan are drawn. */
const MARK_ERROR = 2;
/** Off by a larger share, the second distance tells of a leaning camera or a wrong figure rather than of marks. */
const FLAT_WITHIN = 0.03;
const STEP = 10;

/**
 * The hall from corners marked on a picture of its plan. Errors are one ordinary error, marks counted as independent:
 * a length of ℓ points is off by √2 marks, and by its share of the known distance's own √2 marks. Problems: those of
 * `traceProblems` and `floorProblems`.
 */
export function tracedPlan(tracing: Tracing, units: LengthUnits): Result<TracedPlan> {
  const problems = traceProblems(tracing);
  if (problems.length > 0) return bad(...problems);
  const { known, check, corners, squareWithin } = tracing;
  const scale = known.length / between(known);
  const raw = corners.map(([x, y]): Point => [x * scale, -y * scale]);
  const crossing = outlineProblems(raw.map(([x, y]): Point => [Math.round(x), Math.round(y)]));
  if (crossing.length > 0) return bad(...crossing);
  const outline = toBottomLeft(straightened(raw, squareWithin, STEP));
  const found = outlineProblems(outline);
  if (found.length > 0) return bad(...found);
  const lengths = wallsOf(outline).map((it) => it.length);
  const off = (length: number): number => lengthOff(length, scale, between(known));
  const checked = check === null ? null : checkOf(check, scale);
  const figures = {
    scale,
    longestOff: off(Math.max(...lengths)),
    shortestOff: off(Math.min(...lengths)),
    check: checked,
  };
  return good({ outline, ...figures, sentences: tracedSentences(figures, units) });
}

function outlineProblems(outline: Polygon): readonly Problem[] {
  return floorProblems(floorDraft(outline));
}

function between({ from, to }: Pick<KnownDistance, "from" | "to">): number {
  return Math.hypot(to[0] - from[0], to[1] - from[1]);
}

function lengthOff(length: number, scale: number, knownPoints: number): number {
  const marks = Math.SQRT2 * MARK_ERROR;
  return Math.round(Math.hypot(marks * scale, (length * marks) / knownPoints));
}

function checkOf(check: KnownDistance, scale: number): NonNullable<TracedPlan["check"]> {
  const found = Math.round(between(check) * scale);
  return { found, length: check.length, offBy: found - check.length };
}

function toBottomLeft(outline: Polygon): Polygon {
  const [left, bottom] = [Math.min(...outline.map(([x]) => x)), Math.min(...outline.map(([, y]) => y))];
  return outline.map(([x, y]) => [x - left, y - bottom]);
}

function tracedSentences(
  { scale, longestOff, shortestOff, check }: Omit<TracedPlan, "outline" | "sentences">,
  units: LengthUnits,
): readonly string[] {
  const size = (millimetres: number): string => formatLength(millimetres, units);
  const fine = units === "metric" ? `${scale.toFixed(1)} mm` : `${(scale / 25.4).toFixed(2)} in`;
  return [
    `One point of the picture is ${fine} of the hall. With marks set to two points, the longest wall may be off by about ${size(longestOff)} and the shortest by about ${size(shortestOff)}.`,
    ...(check === null
      ? ["Nothing checks whether the picture was taken flat-on: mark a second distance that you know."]
      : [checkSentence(check, size)]),
  ];
}

function checkSentence(
  { found, length, offBy }: NonNullable<TracedPlan["check"]>,
  size: (millimetres: number) => string,
): string {
  const share = Math.abs(offBy) / length;
  const percent = (share * 100).toFixed(1);
  const off = `The second distance comes out as ${size(found)} and is ${size(length)}: ${size(Math.abs(offBy))}, ${percent} %, too ${offBy > 0 ? "long" : "short"}.`;
  if (offBy === 0) return `The second distance comes out as it is, ${size(length)}.`;
  if (share <= FLAT_WITHIN) return `${off} That is as near as marks come.`;
  return `${off} The picture was not taken flat-on, or one of the two distances is wrong: walls elsewhere may be off by as much. Take it again from straight above, or measure with a tape.`;
}
