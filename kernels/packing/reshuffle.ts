import { uniformFloat64 } from "pure-rand/distribution/uniformFloat64";
import { uniformInt } from "pure-rand/distribution/uniformInt";
import type { RandomGenerator } from "pure-rand/types/RandomGenerator";
import type { Laid } from "./laid.ts";
import { blocksInWindow, touches, windowOf } from "./block-window.ts";
import { clash, type Ground, openAt } from "./open-places.ts";

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

/** Where a hole is filled from: 1 from the left (from below), -1 from the right (from above). */
type Corner = { readonly x: 1 | -1; readonly y: 1 | -1 };

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

/** Lays as many as it finds room for in and around the hole. */
export function fillHole(
  ground: Ground,
  kept: readonly Laid[],
  hole: Hole,
  random: RandomGenerator,
  corner: Corner,
): readonly Laid[] {
  const laid = [...kept];
  const near = kept.filter((other) => meets(ground, other, hole));

  const slope = 4 ** (uniformFloat64(random) * 2 - 1);
  const favour = (uniformFloat64(random) - 0.5) * 1500;
  const noise = uniformInt(random, 0, 2) * 250;
  for (;;) {
    const next = bestPlace();
    if (next === null) return laid;
    laid.push(next);
    near.push(next);
  }

  function bestPlace(): Laid | null {
    let best: Laid | null = null;
    let least = Infinity;
    const open: number[] = [];
    for (const turn of [0, 1] as const) {
      const own = ground.space.turns[turn];
      for (const y of heightsFor(ground, near, turn, hole)) {
        openAt(ground, near, turn, y, open);
        for (let i = 0; i < open.length; i++) {
          const x = open[i]!;
          if (x + own.width < hole.left || x > hole.right) continue;
          const left = corner.x > 0 ? x : -x - own.width;
          const low = corner.y > 0 ? y : -y - own.height;
          const cost = left + slope * low + (turn === 0 ? favour : -favour) + noise * uniformFloat64(random);
          if (cost < least) {
            least = cost;
            best = { turn, x, y };
          }
        }
      }
    }
    return best;
  }
}

type Box = { readonly left: number; readonly right: number; readonly bottom: number; readonly top: number };
/** A part of the floor to fill, and what lay there before. */
export type Hole = Box & { readonly before: readonly Laid[] };

function everywhere({ space }: Ground): Hole {
  const { frame, width, height } = space.turns[0];
  const reach = width + height;
  return {
    left: frame.firstAlong - reach,
    right: frame.lastAlong + 2 * reach,
    bottom: frame.firstAcross - reach,
    top: frame.lastAcross + 2 * reach,
    before: [],
  };
}

function holeOf({ space }: Ground, removed: readonly Laid[]): Box {
  let [left, right, bottom, top] = [Infinity, -Infinity, Infinity, -Infinity];
  const margin = (space.turns[0].width + space.turns[0].height) / 4;
  for (const { turn, x, y } of removed) {
    const { width, height } = space.turns[turn];
    left = Math.min(left, x - margin);
    right = Math.max(right, x + width + margin);
    bottom = Math.min(bottom, y - margin);
    top = Math.max(top, y + height + margin);
  }
  return { left, right, bottom, top };
}

/** Whether one that overlaps the hole could clash with it, generously. */
function meets({ space }: Ground, { turn, x, y }: Laid, hole: Box): boolean {
  const { width, height, gapX, gapY } = space.turns[turn];
  const reach = Math.max(
    space.turns[0].width + space.turns[0].gapX,
    space.turns[1].width + space.turns[1].gapX,
  );
  const rise = Math.max(
    space.turns[0].height + space.turns[0].gapY,
    space.turns[1].height + space.turns[1].gapY,
  );
  return (
    x - gapX < hole.right + reach &&
    x + width + gapX > hole.left - reach &&
    y - gapY < hole.top + rise &&
    y + height + gapY > hole.bottom - rise
  );
}

/** Heights worth trying: on or under a neighbour, level with one, at an end of the floor, where one was before. */
function heightsFor({ space }: Ground, near: readonly Laid[], turn: 0 | 1, hole: Hole): readonly number[] {
  const own = space.turns[turn];
  const { frame } = own;
  const heights = new Set<number>();
  const add = (y: number): void => {
    if (
      y >= frame.firstAcross - 1e-6 &&
      y <= frame.lastAcross + 1e-6 &&
      y + own.height > hole.bottom &&
      y < hole.top
    )
      heights.add(Math.round(y * 1e5) / 1e5);
  };
  add(frame.firstAcross);
  add(frame.lastAcross);
  for (const y of own.stops) add(y);
  for (const other of near) {
    const its = space.turns[other.turn];
    add(other.y + its.height + its.gapY / 2 + own.gapY / 2);
    add(other.y - its.gapY / 2 - own.gapY / 2 - own.height);
    if (other.turn === turn) add(other.y);
  }
  for (const other of hole.before) {
    if (other.turn === turn) add(other.y);
  }
  return [...heights];
}

/** A plan without those that clash with earlier ones or the floor. */
export function soundPart(ground: Ground, laid: readonly Laid[]): readonly Laid[] {
  const kept: Laid[] = [];
  const open: number[] = [];
  for (const each of laid) {
    openAt(ground, [], each.turn, each.y, open);
    const stands = open.some(
      (from, i) => i % 2 === 0 && each.x >= from - TOUCHING && each.x <= open[i + 1]! + TOUCHING,
    );
    if (stands && !kept.some((other) => clash(ground.space, each, other))) kept.push(each);
  }
  return kept;
}

const TOUCHING = 1e-5;
