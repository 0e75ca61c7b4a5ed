import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";
import { area, quarterTurnAngle, wallDirections } from "#kernels/geometry";
import { areaBound } from "./area-bound.ts";
import type { Solver } from "#kernels/search";
import { boundStep } from "./axis-bound.ts";
import { type AxisSearch, askStep, bestOf, searchStep, startAxis } from "./axis-search.ts";
import { placedOf } from "./laid.ts";
import { linesPlan } from "./lines-plan.ts";
import type { MostOptions, MostPlan } from "./most-types.ts";
import { mustBeSound, mustHaveAxes } from "./must-be-sound.ts";
import { surroundingsOf } from "./obstacles.ts";
import type { Floor, Gaps, Piece } from "./packing-types.ts";

export type MostSearch = {
  readonly axes: AxisSearch[];
  /** axes not begun yet: beginning one takes a step of its own */
  readonly waiting: number[];
  readonly begin: (axis: number) => AxisSearch;
  readonly options: MostOptions;
  /** no plan of any kind holds more */
  readonly ceiling: number;
};

/**
 * A search as far as it has come. Advancing it uses it up: go on with what advanceMost returns. Its plan stays good
 * whatever happens to the run.
 */
export type MostRun = {
  readonly plan: MostPlan;
  /** steps taken so far, each some ten milliseconds of work; those that ask the solver or begin an axis take longer, up to a second */
  readonly steps: number;
  /** nothing more to do: proven, or every way of proving is used up */
  readonly finished: boolean;
  /** axes for which it is proven that they hold no more than the plan, out of how many */
  readonly axesSettled: number;
  readonly axes: number;
  /** the state that advanceMost works on */
  readonly search: MostSearch;
};

/**
 * The most equal rectangles along an axis or across it, each wherever the floor allows: a first plan in straight
 * lines, to be made better and bounded by advanceMost. Lengths in millimetres, axes in degrees; "auto" takes every
 * direction of the walls. The outline must be a simple polygon. Throws on sizes that are none and on axes that
 * are none or no numbers.
 */
export function startMost(
  floor: Floor,
  piece: Piece,
  gaps: Gaps,
  axes: readonly number[] | "auto",
  options: MostOptions = {},
): MostRun {
  mustBeSound(piece, gaps);
  mustHaveAxes(axes);
  const wanted = axes === "auto" ? wallDirections(floor.outline) : [...new Set(axes.map(quarterTurnAngle))];
  const ceiling = area(floor.outline) === 0 ? 0 : areaBound(floor, piece, gaps);
  const surroundings = surroundingsOf(floor, gaps.wall);
  const random = xoroshiro128plus(options.seed ?? 1);
  const begin = (axis: number): AxisSearch =>
    startAxis(floor, piece, gaps, surroundings, axis, random, ceiling);
  const waiting = ceiling === 0 ? [] : bestLinesFirst(floor, piece, gaps, wanted);
  const first = waiting.shift();
  return told({ axes: first === undefined ? [] : [begin(first)], waiting, begin, options, ceiling }, 0);
}

/** The axis along which straight lines hold most leads. */
function bestLinesFirst(floor: Floor, piece: Piece, gaps: Gaps, axes: readonly number[]): number[] {
  if (axes.length < 2) return [...axes];
  const { axis } = linesPlan(floor, piece, gaps, axes);
  return [...axes.filter((each) => each === axis), ...axes.filter((each) => each !== axis)];
}

/** The run so many steps further, or finished before. The same steps in other portions come to the same. */
export function advanceMost(run: MostRun, steps: number): MostRun {
  const { search } = run;
  let taken = run.steps;
  while (taken < run.steps + steps && !isFinished(search)) {
    oneStep(search, taken);
    taken++;
  }
  return told(search, taken);
}

/** The best plan and bound that so many steps come to. */
export function mostPlan(
  floor: Floor,
  piece: Piece,
  gaps: Gaps,
  axes: readonly number[] | "auto",
  steps: number,
  options: MostOptions = {},
): MostPlan {
  return advanceMost(startMost(floor, piece, gaps, axes, options), steps).plan;
}

/** Steps that all look for a better plan: most are found within them. */
const FIRST = 24;

/** While axes wait, one step in so many begins one. */
const BEGIN_EVERY = 4;

/** Steps from which on luck has had its time, and proofs get more of it. */
const LATER = 300;

/** Then every other step looks for a better plan, later every fourth; the rest bring down the greatest bound. */
function oneStep({ axes, waiting, begin, options }: MostSearch, taken: number): void {
  const best = bestCount(axes);
  if (waiting.length > 0 && taken % BEGIN_EVERY === BEGIN_EVERY - 1) {
    axes.push(begin(waiting.shift()!));
    return;
  }
  const open = axes.filter((axis) => axis.limit.bound > best);
  const every = taken < FIRST ? 1 : taken < LATER ? 2 : 4;
  if (taken % every === 0) {
    const chosen = choose(open, taken / every);
    if (chosen !== undefined) searchStep(chosen);
  } else boundOrAsk(open, best, options.solver, taken);
}

/** A programme takes the solver far longer than a step: every other one goes to luck meanwhile. */
const ASK_EVERY = 2;

/** The highest bound first, by weights, or by the solver where those leave a small question; then all is luck. */
function boundOrAsk(
  open: readonly AxisSearch[],
  best: number,
  solver: Solver | undefined,
  taken: number,
): void {
  const unproven = open.filter((axis) => !axis.limit.exhausted);
  const highest = Math.max(...unproven.map((axis) => axis.limit.bound));
  const next = unproven.find((axis) => axis.limit.bound === highest);
  if (next?.limit.question === true && solver !== undefined)
    return taken % ASK_EVERY === 1 ? askStep(next, solver) : searchStep(next);
  if (next !== undefined) return boundStep(next.limit, best);
  const chosen = open[taken % Math.max(1, open.length)];
  if (chosen !== undefined) searchStep(chosen);
}

/** In turn, but every other time one of those that hold most. */
function choose(open: readonly AxisSearch[], turn: number): AxisSearch | undefined {
  const most = bestCount(open);
  const leading = open.filter((axis) => bestOf(axis).length === most);
  const from = turn % 2 === 0 ? leading : open;
  return from[Math.floor(turn / 2) % from.length];
}

function bestCount(axes: readonly AxisSearch[]): number {
  return Math.max(0, ...axes.map((axis) => bestOf(axis).length));
}

function boundOf({ axes, waiting, ceiling }: MostSearch): number {
  const best = bestCount(axes);
  if (waiting.length > 0) return ceiling;
  return Math.max(best, Math.min(ceiling, Math.max(0, ...axes.map((axis) => trusted(axis, ceiling)))));
}

/** A bound below the axis's own plan would be a fault of ours: then nothing is claimed but the area's. */
function trusted(axis: AxisSearch, ceiling: number): number {
  return axis.limit.bound < bestOf(axis).length ? ceiling : axis.limit.bound;
}

function isFinished(search: MostSearch): boolean {
  return boundOf(search) <= bestCount(search.axes);
}

function told(search: MostSearch, steps: number): MostRun {
  const { axes } = search;
  const count = bestCount(axes);
  const bound = boundOf(search);
  const leader = axes.find((axis) => bestOf(axis).length === count);
  const pieces = leader === undefined ? [] : bestOf(leader).map((laid) => placedOf(leader.space, laid));
  return {
    plan: { axis: leader?.space.axis ?? 0, pieces, count, bound, proven: count === bound },
    steps,
    finished: isFinished(search),
    axesSettled: axes.filter((axis) => axis.limit.bound <= count).length,
    axes: axes.length + search.waiting.length,
    search,
  };
}
