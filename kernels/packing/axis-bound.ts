import type { Outcome, Programme } from "#kernels/search";
import { branchCover } from "./branch-cover.ts";
import { type Cover, coverRounds, startCover } from "./cover-bound.ts";
import { type Points, pointsOf, isSlanted } from "./points-of.ts";
import { latticePoints } from "./lattice-points.ts";
import type { MostSpace } from "./most-space.ts";
import { narrowCover } from "./narrow-cover.ts";
import type { Settled } from "./settle-by-solver.ts";
import { type Reaches, reachesOf, slabsOf } from "./reach-of.ts";

/** The bound of one axis as it comes down. */
export type AxisBound = {
  readonly space: MostSpace;
  readonly levels: readonly Level[];
  /** how finely the floor is looked at: index in levels */
  level: number;
  /** no plan along this axis holds more; a whole number */
  bound: number;
  /** what is worked on now, and what is still to be done before the bound comes down by one */
  cover: Cover | null;
  readonly open: Cover[];
  /** the places of this level before any were left out, and how far their cover had come then */
  whole: Reaches | null;
  root: Cover | null;
  /** how often a cover was parted at this level */
  partings: number;
  /** the bound at which it was last tried to leave places out, and the round until which that buys time */
  narrowedAt: number;
  patience: number;
  /** the cover is small and weights do not settle it: a question for the solver */
  question: boolean;
  asking: Asking | null;
  /** nothing left that can be done for the bound */
  exhausted: boolean;
};

/** A question on its way: the programme that the solver is to be given next. */
type Asking = {
  readonly question: Generator<Programme, Settled, Outcome>;
  readonly programme: Programme;
};

type Level = {
  readonly points: (space: MostSpace) => Points;
  /** thickness in millimetres under which a slab with slanted sides is not cut */
  readonly finest: number;
  /** rounds before it is left */
  readonly rounds: number;
};

const UPRIGHT: readonly Level[] = [
  { points: (space) => pointsOf(space, 90), finest: 60, rounds: 600 },
  { points: (space) => pointsOf(space, 170), finest: 20, rounds: 2000 },
  { points: (space) => pointsOf(space, 300), finest: 6, rounds: 8000 },
];
const SLANTED: readonly Level[] = [
  { points: (space) => latticePoints(space, 90), finest: 60, rounds: 600 },
  { points: (space) => latticePoints(space, 180), finest: 20, rounds: 1500 },
  { points: (space) => latticePoints(space, 260), finest: 6, rounds: 5000 },
  { points: (space) => latticePoints(space, 420), finest: 3, rounds: 8000 },
];

export function startBound(space: MostSpace, ceiling: number): AxisBound {
  return {
    space,
    levels: space.turns.some(isSlanted) ? SLANTED : UPRIGHT,
    level: -1,
    bound: ceiling,
    cover: null,
    open: [],
    whole: null,
    root: null,
    partings: 0,
    narrowedAt: Infinity,
    patience: 0,
    question: false,
    asking: null,
    exhausted: false,
  };
}

/** Work in one step: about this many looks at a block or a point. */
const WORK = 3e6;

/** One step towards a bound of `needed` or less. */
export function boundStep(limit: AxisBound, needed: number): void {
  const { cover } = limit;
  if (limit.exhausted || limit.bound <= needed) return;
  if (cover === null) return deepen(limit);
  if (limit.question) return branch(limit);
  coverRounds(cover, Math.ceil(WORK / (6 * cover.reaches.size + 6 * cover.points + 1)));
  const proven = Math.floor(cover.bound + 1e-9);
  if (cover.spared === 0) limit.bound = Math.min(limit.bound, proven);
  else if (proven < limit.bound) return settle(limit);
  if (limit.bound <= needed) return;
  if (cover.bound >= limit.narrowedAt || !narrow(limit, cover)) goOn(limit, cover);
}

/** What is worked on holds no plan of as many as the bound: on to the next part; with the last the bound comes down. */
export function settle(limit: AxisBound): void {
  if (limit.cover?.spared !== limit.bound - 1)
    throw new RangeError(
      `a cover for plans of more than ${limit.cover?.spared} says nothing of ${limit.bound}`,
    );
  const next = limit.open.pop();
  if (next !== undefined) return work(limit, next);
  limit.bound--;
  // the places left out may be of use to a plan of one less: they must all come back
  if (limit.root === null) return deepen(limit);
  work(limit, limit.root);
  limit.patience = 0;
}

function work(limit: AxisBound, cover: Cover): void {
  limit.cover = cover;
  limit.narrowedAt = Infinity;
  limit.patience = cover.rounds + PATIENCE;
  stopAsking(limit);
}

/** Rounds that a part is worked on at least before it is parted again. */
const PATIENCE = 500;

function narrow(limit: AxisBound, cover: Cover): boolean {
  const narrowed = narrowCover(cover, limit.bound);
  limit.narrowedAt = cover.bound;
  if (narrowed === null) return false;
  if (cover.spared === 0) limit.root = cover;
  limit.cover = narrowed;
  limit.patience = Math.max(limit.patience, Math.ceil(1.4 * cover.rounds) + PATIENCE);
  return true;
}

/** Coarse points are not worked on for longer than this times their rounds, whatever can still be left out. */
const ENOUGH = 1.5;
/** A bound nearer to a whole number than this is worth going on with: it lets places be left out. */
const NEAR = 0.6;
/** Covers of fewer places than this are questions for the solver. */
const ASKED = 4000;
const MOST_PARTINGS = 400;

/** Whether more rounds can help; if not, finer points or a parting may. */
function goOn(limit: AxisBound, cover: Cover): void {
  const isLast = limit.open.length > 0 || limit.level + 1 >= limit.levels.length;
  const enough =
    limit.open.length > 0 ? limit.patience : Math.max(limit.levels[limit.level]?.rounds ?? 0, limit.patience);
  // fractions reach the bound: no weights on these points prove less
  const stuck = cover.floor >= limit.bound - 1e-7;
  if (!isLast) {
    const long = Math.min(enough, ENOUGH * (limit.levels[limit.level]?.rounds ?? 0));
    const far = stuck && cover.bound > limit.bound + NEAR;
    if (far || cover.rounds > long || isSettled(cover)) deepen(limit);
  } else if (cover.rounds > enough || (stuck && isNearlySettled(cover, limit.bound))) {
    if (cover.bound >= limit.bound + 1) giveUp(limit);
    else if (cover.reaches.size <= ASKED && cover.spared > 0) limit.question = true;
    else branch(limit);
  }
}

/** Most of what the bound lies above the target the fractions reach too. */
function isNearlySettled(cover: Cover, target: number): boolean {
  return cover.bound - cover.floor < 0.25 * (cover.bound - target) + 1e-3;
}

function isSettled(cover: Cover): boolean {
  return cover.bound < cover.floor * (1 + 1e-7);
}

/** Parts what is worked on in two. */
export function branch(limit: AxisBound): void {
  const { cover } = limit;
  stopAsking(limit);
  if (cover === null || ++limit.partings > MOST_PARTINGS) return giveUp(limit);
  const parts = branchCover(cover, limit.bound);
  if (parts.length === 0) return giveUp(limit);
  if (cover.spared === 0) limit.root = cover;
  limit.open.push(...parts);
  work(limit, limit.open.pop()!);
}

function stopAsking(limit: AxisBound): void {
  limit.question = false;
  limit.asking = null;
}

function giveUp(limit: AxisBound): void {
  limit.open.length = 0;
  limit.cover = null;
  limit.exhausted = true;
}

/** On to finer points; after the finest nothing is left to do. */
export function deepen(limit: AxisBound): void {
  const level = limit.levels[limit.level + 1];
  limit.open.length = 0;
  stopAsking(limit);
  if (level === undefined) return giveUp(limit);
  limit.level++;
  const { space } = limit;
  const { xs, ys } = level.points(space);
  const slabs = space.turns.map((turn) => slabsOf(turn, ys, level.finest));
  const reaches = reachesOf(space, xs, ys, slabs);
  if (limit.whole !== null && isSame(limit.whole, reaches)) {
    // nothing is to be seen that was not: what was begun is gone on with, if it still stands
    if (limit.cover === null) deepen(limit);
    return;
  }
  limit.whole = reaches;
  limit.root = null;
  limit.partings = 0;
  work(limit, startCover(reaches));
  if (reaches.size === 0) limit.bound = 0;
}

function isSame(one: Reaches, other: Reaches): boolean {
  return (
    one.size === other.size &&
    one.xs.length === other.xs.length &&
    one.ys.length === other.ys.length &&
    one.blocks.every((at, index) => at === other.blocks[index])
  );
}
