import { uniformInt } from "pure-rand/distribution/uniformInt";
import type { RandomGenerator } from "pure-rand/types/RandomGenerator";
import type { Laid } from "./laid.ts";
import { blocksInWindow, touches, windowOf } from "./block-window.ts";
import { type Corner, everywhere, fillHole, holeOf } from "./fill-hole.ts";
import { clash, type Ground } from "./open-places.ts";
import { soundPart } from "./sound-part.ts";

/** A search that takes some away and lays as many or more again. */
export type Shuffle = {
  readonly ground: Ground;
  readonly random: RandomGenerator;
  current: readonly Laid[];
  best: readonly Laid[];
  tries: number;
  sinceBest: number;
  corner: Corner;
};

export function startShuffle(ground: Ground, random: RandomGenerator, laid: readonly Laid[]): Shuffle {
  const best = fillHole(ground, laid, everywhere(ground), random, anyCorner(random));
  return { ground, random, current: best, best, tries: 0, sinceBest: 0, corner: { x: 1, y: 1 } };
}

/** Goes on from another plan, filled up, if it holds as many. */
export function suggest(shuffle: Shuffle, laid: readonly Laid[]): void {
  const { ground, random, best } = shuffle;
  const filled = fillHole(ground, laid, everywhere(ground), random, anyCorner(random));
  if (filled.length < best.length) return;
  shuffle.current = filled;
  if (filled.length > best.length) shuffle.best = filled;
}

/** Tries without a better plan before the search goes back to the best one. */
const PATIENCE = 1500;
/** Tries for which the rectangles are drawn to one corner, and then as many in which they wander. */
const PHASE = 300;

/**
 * One try: a few neighbours are taken up and the hole is filled again. A plan with as many is kept, so that the search
 * wanders; in every other phase only if it lies closer to one corner, so that what is left over comes together.
 * A plan with one less is kept now and then, until patience runs out.
 */
export function reshuffle(shuffle: Shuffle): void {
  const { random, current, ground } = shuffle;
  const drawn = Math.floor(shuffle.tries / PHASE) % 2 === 0;
  if (!drawn || shuffle.tries % PHASE === 0) shuffle.corner = anyCorner(random);
  const filled =
    uniformInt(random, 0, BLOCKS_EVERY) === 0
      ? withBlocks(ground, current, random, shuffle.corner)
      : refilled(ground, current, some(random, ground, current), [], random, shuffle.corner);
  shuffle.tries++;
  shuffle.sinceBest++;
  if (isKept(shuffle, filled, drawn)) shuffle.current = filled;
  if (filled.length > shuffle.best.length) {
    shuffle.best = filled;
    shuffle.sinceBest = 0;
  } else if (shuffle.sinceBest % PATIENCE === 0) shuffle.current = shuffle.best;
}

/** One try in so many fills a window with blocks. */
const BLOCKS_EVERY = 15;

/** The plan with a window between two of its rectangles filled with blocks, and what is left around it. */
function withBlocks(
  ground: Ground,
  current: readonly Laid[],
  random: RandomGenerator,
  corner: Corner,
): readonly Laid[] {
  const near = some(random, ground, current);
  const [one, other] = [near[0], near[uniformInt(random, 0, Math.max(0, near.length - 1))]];
  if (one === undefined || other === undefined) return current;
  const window = windowOf(ground.space, [one, other]);
  const blocks = blocksInWindow(ground.space, window);
  const removed = current.filter(
    (laid) => blocks.some((block) => clash(ground.space, block, laid)) || touches(ground.space, laid, window),
  );
  return refilled(ground, current, removed, soundPart(ground, blocks), random, corner);
}

function refilled(
  ground: Ground,
  current: readonly Laid[],
  removed: readonly Laid[],
  added: readonly Laid[],
  random: RandomGenerator,
  corner: Corner,
): readonly Laid[] {
  if (removed.length === 0) return fillHole(ground, current, everywhere(ground), random, corner);
  const kept = [...current.filter((laid) => !removed.includes(laid)), ...added];
  return fillHole(ground, kept, { ...holeOf(ground, removed), before: removed }, random, corner);
}

function isKept({ random, current, corner }: Shuffle, filled: readonly Laid[], drawn: boolean): boolean {
  const loss = current.length - filled.length;
  if (loss !== 0) return loss < 0 || (loss === 1 && uniformInt(random, 0, 199) === 0);
  return !drawn || uniformInt(random, 0, 9) === 0 || away(filled, corner) <= away(current, corner);
}

function away(laid: readonly Laid[], corner: Corner): number {
  return laid.reduce((sum, { x, y }) => sum + corner.x * x + corner.y * y, 0);
}

function anyCorner(random: RandomGenerator): Corner {
  const [x, y] = [uniformInt(random, 0, 1), uniformInt(random, 0, 1)];
  return { x: x === 0 ? 1 : -1, y: y === 0 ? 1 : -1 };
}

/** One of the laid and its nearest neighbours, two to nine in all. */
function some(random: RandomGenerator, { space }: Ground, laid: readonly Laid[]): readonly Laid[] {
  const first = laid[uniformInt(random, 0, Math.max(0, laid.length - 1))];
  if (first === undefined) return [];
  const size = uniformInt(random, 2, 9) + (uniformInt(random, 0, 9) === 0 ? 8 : 0);
  const flat = 2 ** uniformInt(random, -2, 2);
  const far = (other: Laid): number => {
    const [a, b] = [space.turns[first.turn], space.turns[other.turn]];
    const dx = first.x + a.width / 2 - other.x - b.width / 2;
    const dy = first.y + a.height / 2 - other.y - b.height / 2;
    return dx * dx * flat + (dy * dy) / flat;
  };
  const sorted = laid.map((other) => ({ other, at: far(other) })).sort((a, b) => a.at - b.at);
  return sorted.slice(0, size).map(({ other }) => other);
}
