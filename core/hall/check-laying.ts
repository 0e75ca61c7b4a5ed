// Example: { middleWidth: 2500, ringCentre: [4000, 6000] } in the room of 8 × 12 m is sound.
// Invariant: what is left out is no problem: the usual middle and the teacher’s place are meant.
import { containsPoint, edgesOf, pointToSegment, type Polygon } from "#kernels/geometry";
import { formatLength, type LengthUnits, type Problem, problem } from "#core/words";
import type { Hall } from "./hall.ts";

/** Nobody steps through less, and more is a slip of the unit. Millimetres. */
const NARROWEST = 300;
const WIDEST = 20_000;

/**
 * What is wrong with the middle of two banks and the centre of rings that a hall asks for. Problems: "middle-width",
 * "ring-centre-outside"; the latter is not looked for while the floor itself, `within`, is unsound.
 */
export function layingProblems(
  { middleWidth, ringCentre }: Pick<Hall, "middleWidth" | "ringCentre">,
  within: Polygon | undefined,
  units: LengthUnits = "metric",
): readonly Problem[] {
  const middle = middleWidth === undefined ? [] : middleProblems(middleWidth, units);
  if (ringCentre === undefined || within === undefined) return middle;
  // a point on the wall itself is as good as inside
  const onWall = edgesOf(within).some(([from, to]) => pointToSegment(ringCentre, from, to) < 1);
  if (onWall || containsPoint(within, ringCentre)) return middle;
  const says = "The centre of the rings is not on the floor.";
  const next = "Put it on the floor, or leave it out: then rings lie around the teacher’s place.";
  return [...middle, problem("ring-centre-outside", "ringCentre", says, next)];
}

function middleProblems(width: number, units: LengthUnits): readonly Problem[] {
  if (width >= NARROWEST && width <= WIDEST) return [];
  const says = `The middle between two banks is ${formatLength(width, units)} wide.`;
  const next = `Give from ${formatLength(NARROWEST, units)} to ${formatLength(WIDEST, units)}.`;
  return [problem("middle-width", "middleWidth", says, next)];
}
