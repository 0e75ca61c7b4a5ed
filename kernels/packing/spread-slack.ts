import type { Laid } from "./laid.ts";
import type { MostSpace } from "./most-space.ts";
import { SLACK } from "./reach-of.ts";

/** Chains of so many slacks are still told from rectangles that lie apart or across one another. */
const DOUBT = 200 * SLACK;

/**
 * Plans of the slightly smaller rectangles that bounds reckon with, for rectangles of the full size: each is moved
 * right and up by what those left of it and below it need, a few slacks in all.
 */
export function spreadSlack(space: MostSpace, laid: readonly Laid[]): readonly Laid[] {
  const moved = shifted(
    laid,
    (each) => each.x,
    width,
    height,
    (each) => each.y,
    (each, x) => ({ ...each, x }),
  );
  return shifted(
    moved,
    (each) => each.y,
    height,
    width,
    (each) => each.x,
    (each, y) => ({ ...each, y }),
  );

  function width({ turn }: Laid): readonly [size: number, gap: number] {
    return [space.turns[turn].width, space.turns[turn].gapX];
  }
  function height({ turn }: Laid): readonly [size: number, gap: number] {
    return [space.turns[turn].height, space.turns[turn].gapY];
  }
}

type Size = (laid: Laid) => readonly [size: number, gap: number];

/** Along one way: from the lowest on, each at least where those before it, beside it the other way, end. */
function shifted(
  laid: readonly Laid[],
  at: (laid: Laid) => number,
  along: Size,
  across: Size,
  level: (laid: Laid) => number,
  put: (laid: Laid, place: number) => Laid,
): readonly Laid[] {
  const sorted = laid.map((before) => ({ before, now: at(before) })).sort((a, b) => a.now - b.now);
  for (const each of sorted)
    for (const other of sorted) {
      if (other === each) break;
      const [size, gap] = along(other.before);
      const apart = (gap + along(each.before)[1]) / 2;
      const isBefore = at(other.before) + size + apart <= at(each.before) + DOUBT;
      if (isBefore && beside(each.before, other.before))
        each.now = Math.max(each.now, other.now + size + apart);
    }
  return sorted.map(({ before, now }) => put(before, now));

  function beside(a: Laid, b: Laid): boolean {
    const [[sizeA, gapA], [sizeB, gapB]] = [across(a), across(b)];
    const apart = (gapA + gapB) / 2;
    return level(a) < level(b) + sizeB + apart - DOUBT && level(b) < level(a) + sizeA + apart - DOUBT;
  }
}
