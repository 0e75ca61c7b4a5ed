import { area, quarterTurnAngle, wallDirections } from "#kernels/geometry";
import { fillFrame, type Filling, startFilling } from "./fill-frame.ts";
import { frameOf } from "./frame-of.ts";
import { obstaclesOf } from "./obstacles.ts";
import type { Floor, Gaps, LinesOptions, LinesPlan, Piece } from "./packing-types.ts";
import { placedLines } from "./placed-lines.ts";

const STEPS = 200_000;

type Way = { readonly axis: number; readonly direction: number; readonly along: "length" | "width" };
type Trial = { readonly way: Way; readonly filling: Filling };

/**
 * The most equal rectangles in straight parallel lines, all turned one way: best over the axes, the two ways
 * the lines can run, and the rectangles along or across them. Lengths in millimetres, axes in degrees;
 * "auto" takes every direction of the walls. The outline must be a simple polygon. Where several plans are
 * equally good the first axis wins, then rectangles side by side before end to end, then lines along the axis.
 */
export function linesPlan(
  floor: Floor,
  piece: Piece,
  gaps: Gaps,
  axes: readonly number[] | "auto",
  options: LinesOptions = {},
): LinesPlan {
  mustBeSound(piece, gaps);
  const tried = axes === "auto" ? wallDirections(floor.outline) : axes.map(quarterTurnAngle);
  const steps = options.steps ?? STEPS;
  const ways = tried.flatMap(waysOf);
  if (area(floor.outline) === 0) return emptyPlan(tried[0] ?? 0);
  const obstacles = obstaclesOf(floor, gaps.wall);
  const trials = ways.map((way) => ({
    way,
    filling: startFilling(frameOf(floor, piece, gaps, obstacles, way.direction, way.along)),
  }));
  const best = bestOf(trials, steps);
  if (best === null) return emptyPlan(tried[0] ?? 0);
  return planFrom(best, trials);
}

/** The four ways for one axis, in the order that breaks ties. */
function waysOf(axis: number): readonly Way[] {
  return (["width", "length"] as const).flatMap((along) =>
    [axis, axis + 90].map((direction) => ({ axis, direction, along })),
  );
}

/** Fills the frames in order; one that cannot win any more is left as it is. */
function bestOf(trials: readonly Trial[], steps: number): Trial | null {
  let best: Trial | null = null;
  let left = steps;
  for (const [index, trial] of trials.entries()) {
    const later = Math.max(0, ...trials.slice(index + 1).map((other) => other.filling.lower.count));
    const needed = Math.max(1, later, best === null ? 0 : best.filling.lower.count + 1);
    const before = trial.filling.strips.steps;
    fillFrame(trial.filling, needed, before + left);
    left -= trial.filling.strips.steps - before;
    if (trial.filling.lower.count >= needed) best = trial;
  }
  return best;
}

function planFrom(best: Trial, trials: readonly Trial[]): LinesPlan {
  const { grid, lines } = placedLines(best.filling, best.way);
  const count = best.filling.lower.count;
  const bound = Math.max(count, ...trials.map((trial) => trial.filling.upper.count));
  const steps = trials.reduce((sum, trial) => sum + trial.filling.strips.steps, 0);
  return { ...best.way, lines, count, bound, proven: count === bound, grid, steps };
}

function emptyPlan(axis: number): LinesPlan {
  return {
    axis,
    direction: axis,
    along: "width",
    lines: [],
    count: 0,
    bound: 0,
    proven: true,
    grid: 10,
    steps: 0,
  };
}

function mustBeSound(piece: Piece, gaps: Gaps): void {
  const sizes = [piece.length, piece.width];
  const spaces = [gaps.side, gaps.end, gaps.wall];
  if (sizes.every((size) => size > 0 && size < Infinity) && spaces.every((gap) => gap >= 0 && gap < Infinity))
    return;
  throw new RangeError(`not a rectangle and its gaps: ${JSON.stringify({ piece, gaps })}`);
}
