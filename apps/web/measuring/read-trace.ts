import { type KnownDistance, type TracedPlan, tracedPlan } from "#core/hall";
import { bad, good, type LengthUnits, type Problem, problem, type Result } from "#core/words";
import type { Trace, TypedDistance } from "./measuring.ts";
import { isBlank, readTypedLength } from "./read-typed-length.ts";

export type TraceRead = {
  readonly plan: Result<TracedPlan>;
  /** of the two lengths that were typed; undefined where they read or are blank */
  readonly knownProblem: Problem | undefined;
  readonly checkProblem: Problem | undefined;
};

/** Degrees within which a marked corner is made square by choice: a mark 4 points out on a wall of 60. */
const TRACED_SQUARE = 4;

/** The hall that was traced, or what is still missing, in the order in which it is asked for. */
export function readTrace(trace: Trace, units: LengthUnits): TraceRead {
  const known = readDistance(trace.known, units, "known", "The known distance");
  const check = readDistance(trace.check, units, "check", "The second distance");
  // a second distance that is half there must not keep the first from being used
  const isWhole = check.ok || !(isBlank(trace.check) && trace.check.from === null);
  return {
    plan: known.ok ? planOf(trace, known.value, check.ok ? check.value : null, units) : known,
    knownProblem: typedProblem(trace.known, known),
    checkProblem: isWhole && !check.ok ? check.problems[0] : undefined,
  };
}

function planOf(
  { corners, square }: Trace,
  known: KnownDistance,
  check: KnownDistance | null,
  units: LengthUnits,
): Result<TracedPlan> {
  return tracedPlan({ corners, known, check, squareWithin: square ? TRACED_SQUARE : 0 }, units);
}

function readDistance(
  distance: TypedDistance,
  units: LengthUnits,
  place: string,
  name: string,
): Result<KnownDistance> {
  const { from, to } = distance;
  if (from === null || to === null) {
    const says =
      from === null ? `${name} is not marked yet.` : `Only one end of ${midSentence(name)} is marked.`;
    const next = from === null ? "Mark both of its ends on the picture." : "Mark its other end.";
    return bad(problem("trace-marks-missing", place, says, next));
  }
  if (isBlank(distance)) {
    const says = `${name} is marked but not given.`;
    return bad(problem("length-unreadable", `${place}.length`, says, "Type what it is in the hall."));
  }
  const length = readTypedLength(distance, units, `${place}.length`);
  return length.ok ? good({ from, to, length: length.value }) : length;
}

function midSentence(name: string): string {
  return name.replace(/^The /, "the ");
}

function typedProblem(typed: TypedDistance, read: Result<KnownDistance>): Problem | undefined {
  return read.ok || isBlank(typed) ? undefined : read.problems.find((it) => it.place.endsWith("length"));
}
