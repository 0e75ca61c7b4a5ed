import { cutsAlong } from "./block-boxes.ts";
import { type Extent, fillBlocks } from "./fill-blocks.ts";
import type { Laid } from "./laid.ts";
import type { MostSpace, Turn } from "./most-space.ts";

/** The box around some rectangles, each with half its gaps. */
export function windowOf({ turns }: MostSpace, laid: readonly Laid[]): Extent {
  let [left, right, bottom, top] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const { turn, x, y } of laid) {
    const { width, height, gapX, gapY } = turns[turn];
    left = Math.min(left, x - gapX / 2);
    right = Math.max(right, x + width + gapX / 2);
    bottom = Math.min(bottom, y - gapY / 2);
    top = Math.max(top, y + height + gapY / 2);
  }
  return { left, right, bottom, top };
}

/** Whether one reaches into the window by more than a thousandth of a millimetre. */
export function touches({ turns }: MostSpace, { turn, x, y }: Laid, window: Extent): boolean {
  const { width, height, gapX, gapY } = turns[turn];
  return (
    x - gapX / 2 < window.right - 1e-3 &&
    x + width + gapX / 2 > window.left + 1e-3 &&
    y - gapY / 2 < window.top - 1e-3 &&
    y + height + gapY / 2 > window.bottom + 1e-3
  );
}

const CUTS = 14;

/** The window filled with blocks; at the edge of the floor each turn reaches as far as it may. */
export function blocksInWindow(space: MostSpace, window: Extent): readonly Laid[] {
  const [first, second] = [limitOf(space.turns[0]), limitOf(space.turns[1])];
  const within = (limit: Extent): Extent => ({
    left: window.left <= Math.max(first.left, second.left) + 1 ? limit.left : window.left,
    right: window.right >= Math.min(first.right, second.right) - 1 ? limit.right : window.right,
    bottom: window.bottom <= Math.max(first.bottom, second.bottom) + 1 ? limit.bottom : window.bottom,
    top: window.top >= Math.min(first.top, second.top) - 1 ? limit.top : window.top,
  });
  const [one, other] = [within(first), within(second)];
  return fillBlocks(space, [one, other], {
    xs: cutsAlong(space, [one.left, other.left], Math.max(one.right, other.right), "x", CUTS),
    ys: cutsAlong(space, [one.bottom, other.bottom], Math.max(one.top, other.top), "y", CUTS),
  });
}

function limitOf({ frame, width, height, gapX, gapY }: Turn): Extent {
  return {
    left: frame.firstAlong - gapX / 2,
    right: frame.lastAlong + width + gapX / 2,
    bottom: frame.firstAcross - gapY / 2,
    top: frame.lastAcross + height + gapY / 2,
  };
}
