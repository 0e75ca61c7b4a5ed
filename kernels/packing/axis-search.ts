import type { Solver } from "#kernels/search";
import type { RandomGenerator } from "pure-rand/types/RandomGenerator";
import { type AxisBound, branch, deepen, settle, startBound } from "./axis-bound.ts";
import { blocksIn, boxesOf } from "./block-boxes.ts";
import { type Exchange, exchangeFrom, exchangeTries, startExchange } from "./exchange.ts";
import { type Laid, laidOf } from "./laid.ts";
import { linesPlan } from "./lines-plan.ts";
import { type MostSpace, mostSpace } from "./most-space.ts";
import type { Surroundings } from "./obstacles.ts";
import { nudge } from "./nudge.ts";
import { groundOf } from "./open-places.ts";
import type { Floor, Gaps, Piece } from "./packing-types.ts";
import { placesOf } from "./places-of.ts";
import { pointsOf } from "./points-of.ts";
import { reshuffle, type Shuffle, startShuffle, suggest } from "./reshuffle.ts";
import { settleBySolver } from "./settle-by-solver.ts";
import { soundPart } from "./sound-part.ts";
import { spreadSlack } from "./spread-slack.ts";

/** One axis of a search: a plan that gets better and a bound that comes down. */
export type AxisSearch = {
  readonly space: MostSpace;
  readonly shuffle: Shuffle;
  /** begun when it is first searched */
  exchange: Exchange | null;
  searches: number;
  /** how many the last plan held that was passed on to the exchange */
  passedOn: number;
  readonly limit: AxisBound;
};

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
  return { space, shuffle, exchange: null, searches: 0, passedOn: 0, limit: startBound(space, ceiling) };
}

/** Tries in one step, some ten milliseconds. */
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

/** What the solver may spend on one programme: nodes, looks at whether to go on, pivots. */
const LIMITS = { nodes: 400, looks: 600, pivots: 6000 };

/**
 * Puts one programme to the solver, of those that ask whether as many as the bound says can be laid. No: the bound
 * comes down, or the next part is looked at. Perhaps: there is a plan, or these points are too coarse to tell that
 * there is none.
 */
export function askStep({ limit, shuffle, space }: AxisSearch, solver: Solver): void {
  const { cover, asking } = limit;
  if (cover === null) return;
  const question = asking?.question ?? settleBySolver(cover, limit.bound);
  const said = asking === null ? question.next() : question.next(solver.solve(asking.programme, LIMITS));
  limit.asking = said.done === true ? null : { question, programme: said.value };
  if (said.done !== true) return;
  const settled = said.value;
  if (settled.kind === "no") return settle(limit);
  if (settled.kind === "unclear") return branch(limit);
  suggest(shuffle, nudge(shuffle.ground, spreadSlack(space, settled.laid)));
  if (bestOf({ shuffle }).length < limit.bound) deepen(limit);
}

export function bestOf({ shuffle }: Pick<AxisSearch, "shuffle">): readonly Laid[] {
  return shuffle.best;
}
