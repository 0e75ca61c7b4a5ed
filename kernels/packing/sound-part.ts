import type { Laid } from "./laid.ts";
import { clash, type Ground, openAt } from "./open-places.ts";

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
