import { type Problem, problem } from "#core/words";
import { LONGEST_FLOOR } from "../check-floor.ts";
import { MOST_CORNERS } from "../check-shape.ts";
import type { KnownDistance, Tracing } from "./traced-plan.ts";

/** Two marks nearer than this, in picture points, are one: a finger sets a mark no finer. */
const SAME = 4;
/** Under so many points a mark two points out changes every wall by a seventh. */
const CLOSE = 20;
/** Millimetres to a point: a hall of 200 m over 400 points at most, and of 1 m² over 4000 at least. */
const COARSEST = 500;
const FINEST = 0.2;

/**
 * What is wrong with marks and distances before anything is scaled. Problems: "trace-marks-same",
 * "trace-marks-close", "trace-distance", "trace-scale", "trace-corners".
 */
export function traceProblems({ corners, known, check }: Tracing): readonly Problem[] {
  const distances = [
    ...distanceProblems(known, "known", "known distance"),
    ...(check === null ? [] : distanceProblems(check, "check", "second distance")),
  ];
  if (distances.length > 0) return distances;
  const scale = known.length / spanOf(known);
  return [...scaleProblems(scale), ...cornerProblems(corners.length)];
}

function distanceProblems(it: KnownDistance, place: string, name: string): readonly Problem[] {
  const span = spanOf(it);
  if (!(span >= SAME)) {
    const says = `Both ends of the ${name} are marked at the same place.`;
    return [problem("trace-marks-same", place, says, "Mark one end, then the other.")];
  }
  if (span < CLOSE) {
    const says = `The ends of the ${name} are only ${Math.round(span)} points of the picture apart.`;
    const next = "Take a longer distance, along a whole wall: every length rests on it.";
    return [problem("trace-marks-close", place, says, next)];
  }
  if (it.length >= 1 && it.length <= LONGEST_FLOOR) return [];
  const says = `The ${name} is ${it.length > 0 ? "more than 200 m" : "nothing"}.`;
  return [problem("trace-distance", `${place}.length`, says, "Give what a tape or the plan says it is.")];
}

function scaleProblems(scale: number): readonly Problem[] {
  if (scale >= FINEST && scale <= COARSEST) return [];
  const says =
    scale > COARSEST
      ? `One point of the picture would be ${Math.round(scale)} mm of the hall.`
      : `One point of the picture would be ${scale.toFixed(2)} mm of the hall.`;
  const next = "Look at the unit of the known distance and at its two marks.";
  return [problem("trace-scale", "known.length", says, next)];
}

function cornerProblems(count: number): readonly Problem[] {
  if (count >= 3 && count <= MOST_CORNERS) return [];
  const says = `${count === 0 ? "No corner is" : count === 1 ? "1 corner is" : `${count} corners are`} marked.`;
  const next =
    count < 3
      ? "Mark every corner in order round the hall, three at least."
      : `Mark at most ${MOST_CORNERS}.`;
  return [problem("trace-corners", "corners", says, next)];
}

function spanOf({ from, to }: KnownDistance): number {
  return Math.hypot(to[0] - from[0], to[1] - from[1]);
}
