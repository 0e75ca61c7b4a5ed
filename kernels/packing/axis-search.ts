import type { Solver } from "#kernels/search";
import type { RandomGenerator } from "pure-rand/types/RandomGenerator";
import { blocksIn, boxesOf } from "./block-boxes.ts";
import { type Cover, coverRounds, startCover } from "./cover-bound.ts";
import { type Exchange, exchangeFrom, exchangeTries, startExchange } from "./exchange.ts";
import { type Laid, laidOf } from "./laid.ts";
import { latticePoints } from "./lattice-points.ts";
import { linesPlan } from "./lines-plan.ts";
import { type MostSpace, mostSpace } from "./most-space.ts";
import type { Surroundings } from "./obstacles.ts";
import { groundOf } from "./open-places.ts";
import type { Floor, Gaps, Piece } from "./packing-types.ts";
import { placesOf } from "./places-of.ts";
import { isSlanted, pointsOf } from "./points-of.ts";
import { type Reaches, reachesOf, slabsOf } from "./reach-of.ts";
import { reshuffle, type Shuffle, soundPart, startShuffle, suggest } from "./reshuffle.ts";
import { settleBySolver } from "./settle-by-solver.ts";
import { spreadSlack } from "./spread-slack.ts";

/** One axis of a search: a plan that gets better and a bound that comes down. */
export type AxisSearch = {
  readonly space: MostSpace;
  readonly shuffle: Shuffle;
  readonly levels: readonly Level[];
  /** begun when it is first searched */
  exchange: Exchange | null;
  searches: number;
  /** how many the last plan held that was passed on to the exchange */
  passedOn: number;
  cover: Cover | null;
  /** how finely the floor is looked at: index in levels */
  level: number;
  /** no plan along this axis holds more; a whole number */
  bound: number;
  /** nothing left that weights can do for the bound */
  exhausted: boolean;
  /** nothing left that the solver can do */
  asked: boolean;
};

type Level = {
  readonly kind: "chains" | "lattice";
  /** points a way */
  readonly points: number;
  /** thickness in millimetres under which a slab with slanted sides is not cut */
  readonly finest: number;
  /** rounds before it is left */
  readonly rounds: number;
};

const UPRIGHT: readonly Level[] = [
  { kind: "chains", points: 90, finest: 60, rounds: 600 },
  { kind: "chains", points: 170, finest: 20, rounds: 1500 },
  { kind: "chains", points: 300, finest: 6, rounds: 8000 },
];
const SLANTED: readonly Level[] = [
  { kind: "lattice", points: 90, finest: 60, rounds: 600 },
  { kind: "lattice", points: 180, finest: 20, rounds: 1500 },
  { kind: "chains", points: 170, finest: 20, rounds: 1000 },
  { kind: "lattice", points: 260, finest: 6, rounds: 3000 },
  { kind: "lattice", points: 450, finest: 4, rounds: 4000 },
];

/** The largest boxes, each filled with blocks to start from. */
const BOXES = 3;

export function startAxis(
  floor: Floor,
  piece: Piece,
  gaps: Gaps,
  surroundings: Surroundings,
  axis: number,
  random: RandomGenerator,
  ceiling: number,
): AxisSearch {
  const space = mostSpace(piece, gaps, surroundings, axis);
  const ground = groundOf(space);
  const lines = linesPlan(floor, piece, gaps, [axis]).lines.flatMap((line) => line.pieces);
  const starts: (readonly Laid[])[] = [lines.flatMap((placed) => laidOf(space, placed) ?? [])];
  if (lines.length > 0) for (const box of boxesOf(space, BOXES)) starts.push(blocksIn(space, box));
  const shuffles = starts.map((start) => startShuffle(ground, random, soundPart(ground, start)));
  const shuffle = shuffles.reduce((held, other) => (other.best.length > held.best.length ? other : held));
  const levels = space.turns.some(isSlanted) ? SLANTED : UPRIGHT;
  return {
    space,
    shuffle,
    levels,
    exchange: null,
    searches: 0,
    passedOn: 0,
    cover: null,
    level: -1,
    bound: ceiling,
    exhausted: false,
    asked: false,
  };
}

/** Work in one step: about this many looks at a block or a point. */
const WORK = 3e6;
const TRIES = 20;
const EXCHANGES = 80;
/** Lines a way on which places for the exchange lie. */
const LINES = 170;

/** Two searches in turn, each of which goes on from the other's plan where that holds more. */
export function searchStep(axis: AxisSearch): void {
  const { shuffle } = axis;
  const exchange = (axis.exchange ??= exchangeOf(axis));
  if (axis.searches++ % 2 === 0) {
    if (shuffle.best.length > Math.max(exchange.best.length, axis.passedOn)) {
      // at the places it may come to fewer: it is passed on once, not at each step
      axis.passedOn = shuffle.best.length;
      exchangeFrom(exchange, shuffle.best);
    }
    exchangeTries(exchange, EXCHANGES);
    if (exchange.best.length > shuffle.best.length)
      suggest(shuffle, soundPart(shuffle.ground, exchange.best));
  } else for (let attempt = 0; attempt < TRIES; attempt++) reshuffle(shuffle);
}

function exchangeOf({ space, shuffle }: AxisSearch): Exchange {
  const exchange = startExchange(placesOf(shuffle.ground, pointsOf(space, LINES, 0)), shuffle.random);
  exchangeFrom(exchange, []);
  return exchange;
}

export function boundStep(axis: AxisSearch, needed: number): void {
  if (axis.cover === null) return deepen(axis);
  const { cover } = axis;
  const cost = 6 * cover.reaches.size + 6 * cover.points;
  coverRounds(cover, Math.ceil(WORK / cost));
  axis.bound = Math.min(axis.bound, Math.floor(cover.bound + 1e-9));
  if (axis.bound <= needed) return;
  const settled = Math.floor(cover.floor - 1e-6) >= axis.bound || cover.bound < cover.floor * (1 + 1e-7);
  if (settled || cover.rounds > (axis.levels[axis.level]?.rounds ?? 0)) deepen(axis);
}

function deepen(axis: AxisSearch): void {
  const { space } = axis;
  const level = axis.levels[axis.level + 1];
  if (level === undefined) {
    axis.exhausted = true;
    return;
  }
  axis.level++;
  const { xs, ys } = (level.kind === "chains" ? pointsOf : latticePoints)(space, level.points);
  const slabs = space.turns.map((turn) => slabsOf(turn, ys, level.finest));
  const reaches = reachesOf(space, xs, ys, slabs);
  if (axis.cover !== null && isSame(axis.cover.reaches, reaches)) return;
  axis.cover = startCover(reaches);
  if (axis.cover.reaches.size === 0) axis.bound = 0;
}

function isSame(one: Reaches, other: Reaches): boolean {
  return (
    one.size === other.size &&
    one.xs.length === other.xs.length &&
    one.ys.length === other.ys.length &&
    one.blocks.every((at, index) => at === other.blocks[index])
  );
}

/** What the solver may spend on one question: nodes, and looks at whether to go on. */
const LIMITS = { nodes: 400, looks: 600 };

/** Asks the solver whether as many as the bound says can be laid: either the bound comes down or there is a plan. */
export function askStep(axis: AxisSearch, solver: Solver): void {
  const { cover, shuffle } = axis;
  if (cover === null) return;
  const settled = settleBySolver(cover, axis.bound, solver, LIMITS);
  if (settled.kind === "no") {
    axis.bound--;
    return;
  }
  axis.asked = true;
  if (settled.kind === "perhaps")
    suggest(shuffle, soundPart(shuffle.ground, spreadSlack(axis.space, settled.laid)));
}

export function bestOf(axis: AxisSearch): readonly Laid[] {
  return axis.shuffle.best;
}
