import { area, quarterTurnAngle, wallDirections } from "#kernels/geometry";
import { areaBound } from "./area-bound.ts";
import { mustBeSound, mustHaveAxes } from "./must-be-sound.ts";
import { cutsOf } from "./cuts-of.ts";
import { type Filling, fillFrame, startFilling } from "./fill-frame.ts";
import { fillWings } from "./fill-wings.ts";
import { frameInTurned } from "./frame-of.ts";
import { surroundingsOf } from "./obstacles.ts";
import type { Floor, Gaps, LinesOptions, LinesPlan, Piece } from "./packing-types.ts";
import { placedLines } from "./placed-lines.ts";
import { turnSurroundings } from "./turn-surroundings.ts";

/**
 * Work before the search stops: a wall costs one, an obstacle eight, a strip fifty besides. Some 40 ms here;
 * of forty halls only the drum of two hundred walls comes to it.
 */
const LOOKS = 3e6;

/** Wings seldom gain a place (eight of 3000 small stepped floors), so they get this share of the work at most. */
const WINGS_SHARE = 0.25;

type Way = { readonly axis: number; readonly direction: number; readonly along: "length" | "width" };
type Trial = { readonly way: Way; readonly filling: Filling; upper: number };
type Best = { readonly way: Way; readonly wings: readonly Filling[]; readonly count: number };
/** Strips that may still be examined, and how many there were to begin with. */
type Budget = { readonly whole: number; left: number };

/**
 * The most equal rectangles in straight parallel lines, all turned one way: best over the axes, the two ways
 * the lines can run, the rectangles along or across them, and wings that have lines of their own. Lengths in
 * millimetres, axes in degrees; "auto" takes every direction of the walls. The outline must be a simple
 * polygon. Of equally good plans the unparted come first, then the first axis, then rectangles side by side
 * before end to end, then lines along the axis. Throws on a size that is not a positive length, a gap below
 * nothing, and axes that are none or no numbers.
 */
export function linesPlan(
  floor: Floor,
  piece: Piece,
  gaps: Gaps,
  axes: readonly number[] | "auto",
  options: LinesOptions = {},
): LinesPlan {
  mustBeSound(piece, gaps);
  mustHaveAxes(axes);
  const wanted = axes === "auto" ? wallDirections(floor.outline) : [...new Set(axes.map(quarterTurnAngle))];
  if (area(floor.outline) === 0) return emptyPlan(wanted[0] ?? 0);
  const surroundings = surroundingsOf(floor, gaps.wall);
  const whole =
    options.steps ?? Math.ceil(LOOKS / (surroundings.hull.length + 8 * surroundings.obstacles.length + 50));
  const budget = { whole, left: whole };
  const trials: Trial[] = [];
  for (const axis of wanted) {
    if (budget.left <= 0 && trials.length > 0) break;
    trials.push(...startTrials(axis));
  }
  fillTrials(trials, budget);
  const best = bestWings(trials, gaps.wall, budget);
  const ways = options.length === undefined ? 4 : 2;
  const missed = trials.length < ways * wanted.length ? areaBound(floor, piece, gaps) : 0;
  return planFrom(best, trials, missed, whole - budget.left);

  /** The four ways of one axis, in the order that breaks ties; two where the length may lie one way only. */
  function startTrials(axis: number): readonly Trial[] {
    const turned = [axis, axis + 90].map((direction) => ({
      direction,
      surroundings: turnSurroundings(surroundings, direction),
    }));
    return (["width", "length"] as const).flatMap((along) =>
      turned.flatMap((each) => {
        const lies = (along === "length") === (each.direction === axis) ? "along" : "across";
        if (options.length !== undefined && options.length !== lies) return [];
        const filling = startFilling(frameInTurned(piece, gaps, each.surroundings, along));
        budget.left -= filling.strips.steps;
        return { way: { axis, direction: each.direction, along }, filling, upper: filling.upper.count };
      }),
    );
  }
}

/** Fills the frames in order; one that cannot win any more is left as it is. */
function fillTrials(trials: readonly Trial[], budget: Budget): void {
  let best = 0;
  for (const [index, trial] of trials.entries()) {
    const { filling } = trial;
    const later = Math.max(0, ...trials.slice(index + 1).map((other) => other.filling.lower.count));
    const before = filling.strips.steps;
    fillFrame(filling, Math.max(later, best + 1), before + budget.left);
    budget.left -= filling.strips.steps - before;
    trial.upper = filling.upper.count;
    best = Math.max(best, filling.lower.count);
  }
}

/** The first of the best unparted plans, unless parting some floor at its cuts holds more. */
function bestWings(trials: readonly Trial[], wall: number, budget: Budget): Best {
  const most = Math.max(0, ...trials.map((trial) => trial.filling.lower.count));
  const first = trials.find((trial) => trial.filling.lower.count === most);
  if (first === undefined) throw new RangeError("no axis to lay lines along");
  let best: Best = { way: first.way, wings: [first.filling], count: most };
  const reserve = budget.left - Math.min(budget.left, budget.whole * WINGS_SHARE);
  for (const trial of trials) {
    const cuts = cutsOf(trial.filling.strips.frame, wall);
    if (cuts.length === 0 || budget.left <= reserve) continue;
    const parted = fillWings(trial.filling, cuts, best.count + 1, budget.left - reserve);
    budget.left -= parted.steps;
    // what was not followed to its end is not among what the bound speaks of
    if (budget.left > reserve) trial.upper = Math.max(trial.upper, parted.upper);
    if (parted.wings === null) continue;
    const count = parted.wings.reduce((sum, wing) => sum + wing.lower.count, 0);
    best = { way: trial.way, wings: parted.wings, count };
  }
  return best;
}

function planFrom(best: Best, trials: readonly Trial[], missed: number, steps: number): LinesPlan {
  const { grid, lines } = placedLines(best.wings, best.way);
  const bound = Math.max(best.count, missed, ...trials.map((trial) => trial.upper));
  return {
    ...best.way,
    lines,
    wings: best.wings.length,
    count: best.count,
    bound,
    proven: best.count === bound,
    grid,
    steps,
  };
}

function emptyPlan(axis: number): LinesPlan {
  const none = { lines: [], wings: 1, count: 0, bound: 0, proven: true, grid: 10, steps: 0 } as const;
  return { axis, direction: axis, along: "width", ...none };
}
