import { uniformFloat64 } from "pure-rand/distribution/uniformFloat64";
import { uniformInt } from "pure-rand/distribution/uniformInt";
import type { RandomGenerator } from "pure-rand/types/RandomGenerator";
import type { Laid } from "./laid.ts";
import { type Ground, openAt } from "./open-places.ts";

/** Where a hole is filled from: 1 from the left (from below), -1 from the right (from above). */
export type Corner = { readonly x: 1 | -1; readonly y: 1 | -1 };

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
type Hole = Box & { readonly before: readonly Laid[] };

export function everywhere({ space }: Ground): Hole {
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

export function holeOf({ space }: Ground, removed: readonly Laid[]): Box {
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
