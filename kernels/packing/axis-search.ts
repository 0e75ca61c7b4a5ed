import type { Solver } from "#kernels/search";
import type { RandomGenerator } from "pure-rand/types/RandomGenerator";
import { blocksIn, boxesOf } from "./block-boxes.ts";
import { type Cover, coverRounds, startCover } from "./cover-bound.ts";
import { type Laid, laidOf } from "./laid.ts";
import { linesPlan } from "./lines-plan.ts";
import { type MostSpace, mostSpace } from "./most-space.ts";
import type { Surroundings } from "./obstacles.ts";
import { groundOf } from "./open-places.ts";
import type { Floor, Gaps, Piece } from "./packing-types.ts";
import { pointsOf } from "./points-of.ts";
import { type Reaches, reachesOf, slabsOf } from "./reach-of.ts";
import { reshuffle, type Shuffle, soundPart, startShuffle, suggest } from "./reshuffle.ts";
import { settleBySolver } from "./settle-by-solver.ts";
import { spreadSlack } from "./spread-slack.ts";

/** One axis of a search: a plan that gets better and a bound that comes down. */
export type AxisSearch = {
  readonly space: MostSpace;
  readonly shuffle: Shuffle;
  cover: Cover | null;
  /** how finely the floor is looked at: index in LEVELS */
  level: number;
  /** no plan along this axis holds more; a whole number */
  bound: number;
  /** nothing left that weights can do for the bound */
  exhausted: boolean;
  /** nothing left that the solver can do */
  asked: boolean;
};

/** Points a way, rounds before it is left, and the thickness in millimetres under which a slab with slanted sides is not cut. */
const LEVELS = [
  { points: 90, finest: 60, rounds: 1200 },
  { points: 170, finest: 20, rounds: 3000 },
  { points: 300, finest: 6, rounds: 6000 },
] as const;

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
  return { space, shuffle, cover: null, level: -1, bound: ceiling, exhausted: false, asked: false };
}

/** Work in one step: about this many looks at a block or a point. */
const WORK = 2e6;
const TRIES = 12;

export function searchStep({ shuffle }: AxisSearch): void {
  for (let attempt = 0; attempt < TRIES; attempt++) reshuffle(shuffle);
}

export function boundStep(axis: AxisSearch, needed: number): void {
  if (axis.cover === null) return deepen(axis);
  const { cover } = axis;
  const cost = 6 * cover.reaches.size + 6 * cover.weights.length;
  coverRounds(cover, Math.max(1, Math.ceil(WORK / cost / 40)) * 40);
  axis.bound = Math.min(axis.bound, Math.floor(cover.bound + 1e-9));
  if (axis.bound <= needed) return;
  const settled = Math.floor(cover.floor - 1e-6) >= axis.bound || cover.bound < cover.floor * (1 + 1e-7);
  if (settled || cover.rounds > (LEVELS[axis.level]?.rounds ?? 0)) deepen(axis);
}

function deepen(axis: AxisSearch): void {
  const { space } = axis;
  const level = LEVELS[axis.level + 1];
  if (level === undefined) {
    axis.exhausted = true;
    return;
  }
  axis.level++;
  const { xs, ys } = pointsOf(space, level.points);
  const slabs = space.turns.map((turn) => slabsOf(turn, ys, level.finest));
  const reaches = reachesOf(space, xs, ys, slabs);
  if (axis.cover !== null && isSame(axis.cover.reaches, reaches)) return;
  axis.cover = startCover(reaches, axis.cover);
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
