import { wallDirections, quarterTurnAngle } from "#kernels/geometry";
import { formatLength, type LengthUnits, millimetresFromMetres } from "#core/words";
import { floorProblems } from "../check-floor.ts";
import type { Hall, MatGaps } from "../hall.ts";
import { hallFrame } from "../hall-frame.ts";
import { placeWords } from "../plan-in-words.ts";
import { lengthInWords } from "../length-in-words.ts";
import type { Trial, Trials, TurnablePlan } from "./gain-types.ts";
import { halvedZone } from "./halved-zone.ts";

/**
 * No change goes below these, in millimetres: beside and behind a mat what is called close (0.30 and 0.20 m), and
 * 0.30 m from a wall, so that an arm that is stretched out meets nobody. Common practice, no source.
 */
export const leastGaps = { side: 300, end: 200, wall: 300 } as const;

const steps = { side: 50, end: 50, wall: 100 } as const;
const gapWords = {
  side: "between long sides",
  end: "between head and foot",
  wall: "from the walls",
} as const;

/** A floor drawn from a curve has a direction a wall: the six with most wall are tried. */
const MOST_DIRECTIONS = 6;

/**
 * Each single change that may make room for a mat, the cheapest first: gaps, the way the plan is turned, what can be
 * moved out of the way, the teacher's zone. Mats of a plan in lines are tried turned by a quarter: the plan takes the
 * better way round by itself, so that says what the other way costs. Without a plan they are not tried.
 */
export function changesToTry(hall: Hall, units: LengthUnits = "metric", plan: TurnablePlan = {}): Trials {
  const parts = [
    ...(["side", "end", "wall"] as const).map((gap) => narrower(hall, gap, units)),
    matsTurned(hall, plan),
    otherDirections(hall),
    fixturesGone(hall),
    teacherHalved(hall, units),
  ];
  return { trials: parts.flatMap((it) => it.trials), leftOut: parts.flatMap((it) => it.leftOut) };
}

function narrower(hall: Hall, gap: keyof MatGaps, units: LengthUnits): Trials {
  const from = hall.gaps[gap];
  const to = millimetresFromMetres((from - steps[gap]) / 1000);
  if (to < leastGaps[gap]) {
    const least = formatLength(leastGaps[gap], units);
    return {
      trials: [],
      leftOut: [
        `Less than ${formatLength(from, units)} ${gapWords[gap]} was not tried: the least is ${least}.`,
      ],
    };
  }
  const step = units === "metric" ? `${steps[gap] / 10} cm` : formatLength(steps[gap], units);
  const says = `${step} less ${gapWords[gap]} (${formatLength(to, units)})`;
  const change = { kind: `${gap} gap` as const, from, to };
  return { trials: [{ change, says, hall: { ...hall, gaps: { ...hall.gaps, [gap]: to } } }], leftOut: [] };
}

function matsTurned(hall: Hall, { arrangement, mats = [] }: TurnablePlan): Trials {
  const [first] = mats;
  if (arrangement !== "lines" || first === undefined) return { trials: [], leftOut: [] };
  const degrees = hundredths((first.angle + 90) % 180);
  const lies = lengthInWords(hall.outline, hallFrame(hall), degrees);
  const change = { kind: "mats turned" as const, degrees };
  return {
    trials: [{ change, says: `Mats turned, their length ${lies}`, hall: { ...hall, lengthAlong: degrees } }],
    leftOut: [],
  };
}

/** A document is read by people: what sums leave of an angle that is nearly whole is left out, and 180 is 0. */
function hundredths(degrees: number): number {
  const near = Math.round(degrees * 100) / 100;
  return Math.abs(near - degrees) < 1e-6 ? near % 180 : degrees;
}

function otherDirections(hall: Hall): Trials {
  const axis = hall.lengthAlong === undefined ? hall.axis : quarterTurnAngle(hall.lengthAlong);
  if (axis === "auto") {
    return { trials: [], leftOut: ["The plan was not turned: every wall direction is tried already."] };
  }
  const others = wallDirections(hall.outline).filter((it) => !sameDirection(it, axis));
  return {
    trials: others.slice(0, MOST_DIRECTIONS).map((degrees) => ({
      change: { kind: "axis", degrees },
      says: `Turned to the walls at ${Math.round(degrees * 10) / 10}°`,
      hall: turnedHall(hall, degrees),
    })),
    leftOut:
      others.length > MOST_DIRECTIONS
        ? [`Only the ${MOST_DIRECTIONS} directions with most wall of ${others.length} were tried.`]
        : [],
  };
}

/** Along another wall mats lie whichever way holds more. */
function turnedHall(hall: Hall, axis: number): Hall {
  const { lengthAlong: _, ...free } = hall;
  return { ...free, axis };
}

/** A hundredth of a degree is 2 mm over 10 m. */
function sameDirection(one: number, other: number): boolean {
  const apart = Math.abs(quarterTurnAngle(one) - quarterTurnAngle(other));
  return Math.min(apart, 90 - apart) < 0.01;
}

function fixturesGone(hall: Hall): Trials {
  const frame = hallFrame(hall);
  const trials = hall.fixtures.flatMap(({ label, outline, movable }, fixture): readonly Trial[] => {
    if (!movable) return [];
    const says = `Without “${label}” (${placeWords(outline, hall, frame)})`;
    const fixtures = hall.fixtures.filter((_, index) => index !== fixture);
    return [{ change: { kind: "fixture gone", fixture }, says, hall: { ...hall, fixtures } }];
  });
  const stays = hall.fixtures.length > 0 && trials.length === 0;
  return { trials, leftOut: stays ? ["Nothing that stands on the floor is marked as movable."] : [] };
}

function teacherHalved(hall: Hall, units: LengthUnits): Trials {
  if (hall.teacher === null) return { trials: [], leftOut: [] };
  const { outline, depth } = halvedZone(hall.teacher.outline, hallFrame(hall).front);
  const halved = { ...hall, teacher: { outline } };
  if (floorProblems(halved).length > 0) {
    return { trials: [], leftOut: ["The teacher’s zone has a shape that cannot be halved by one cut."] };
  }
  const says = `Half the depth for the teacher (${formatLength(depth, units)})`;
  return { trials: [{ change: { kind: "teacher halved", depth }, says, hall: halved }], leftOut: [] };
}
