import type { Laid } from "./laid.ts";
import { type Ground, openAt } from "./open-places.ts";

/** Millimetres by which one may be moved to find a place that the floor and the others allow. */
const FAR = 80;

/**
 * A plan that is nearly allowed, each rectangle moved to the nearest place that is: from the left, from below, from
 * the right and from above, and of these the plan that keeps most. What finds no place near by is left out.
 */
export function nudge(ground: Ground, laid: readonly Laid[]): readonly Laid[] {
  const orders: readonly ((each: Laid) => number)[] = [
    ({ x, y }) => x + y / 64,
    ({ x, y }) => y + x / 64,
    ({ turn, x }) => -x - ground.space.turns[turn].width,
    ({ turn, y }) => -y - ground.space.turns[turn].height,
  ];
  const plans = orders.map((order) =>
    inOrder(
      ground,
      laid.toSorted((a, b) => order(a) - order(b)),
    ),
  );
  return plans.reduce((best, plan) => (plan.length > best.length ? plan : best));
}

function inOrder(ground: Ground, laid: readonly Laid[]): readonly Laid[] {
  const kept: Laid[] = [];
  for (const each of laid) {
    const place = nearestOpen(ground, kept, each);
    if (place !== null) kept.push(place);
  }
  return kept;
}

function nearestOpen(ground: Ground, kept: readonly Laid[], { turn, x, y }: Laid): Laid | null {
  let best: Laid | null = null;
  let least = FAR;
  const open: number[] = [];
  for (const height of heightsNear(ground, kept, turn, y)) {
    const up = Math.abs(height - y);
    if (up >= least) continue;
    openAt(ground, kept, turn, height, open);
    for (let i = 0; i < open.length; i += 2) {
      const at = Math.min(Math.max(x, open[i]!), open[i + 1]!);
      const away = up + Math.abs(at - x);
      if (away < least) [best, least] = [{ turn, x: at, y: height }, away];
    }
  }
  return best;
}

function heightsNear({ space }: Ground, kept: readonly Laid[], turn: 0 | 1, y: number): readonly number[] {
  const own = space.turns[turn];
  const touching = kept.flatMap((other) => {
    const its = space.turns[other.turn];
    const gap = (own.gapY + its.gapY) / 2;
    return [other.y + its.height + gap, other.y - gap - own.height];
  });
  const { firstAcross, lastAcross } = own.frame;
  const all = [y, firstAcross, lastAcross, ...own.stops, ...touching];
  return all.filter((at) => Math.abs(at - y) < FAR && at >= firstAcross - 1e-6 && at <= lastAcross + 1e-6);
}
