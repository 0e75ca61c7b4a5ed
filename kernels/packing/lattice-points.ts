import type { MostSpace, Turn } from "./most-space.ts";
import type { Points } from "./points-of.ts";
import { SLACK } from "./reach-of.ts";

/**
 * Points evenly apart both ways. A rectangle that slides over such points holds now ⌊w/h⌋ columns of them, now one
 * more, so as far as a bound can tell it is only h·⌊w/h⌋ wide. Distances at which both sides of the grown rectangle
 * lose next to nothing by that are better than much closer ones at which they do: sides of 2.03 and 1.11 m
 * come to 31.09 and 17 times 65.3 mm, and lose 0.3 % and nothing.
 */
export function latticePoints(space: MostSpace, most: number, shift: Shift = UNSHIFTED): Points {
  const [first, second] = space.turns;
  const sides = [first.width + first.gapX - 2 * SLACK, first.height + first.gapY - 2 * SLACK] as const;
  const across = endsOf(first, second, "x");
  const up = endsOf(first, second, "y");
  const apart = bestDistance(sides, Math.max(across.to - across.from, up.to - up.from) / most);
  return { xs: evenly(across, apart, shift.x), ys: evenly(up, apart, shift.y) };
}

/** Parts of a distance by which all points lie further left and lower: 0 ≤ x, y < 1. */
export type Shift = { readonly x: number; readonly y: number };
const UNSHIFTED: Shift = { x: 0, y: 0 };

/** Between the least distance and so many times it. */
const RANGE = 1.6;
/** A distance costs at slanted walls too: there a rectangle may seem to reach this share of it too far. */
const AT_WALLS = 0.1;

function bestDistance([long, short]: readonly [number, number], least: number): number {
  let [best, loss] = [least, Infinity];
  for (const side of [long, short])
    for (let parts = Math.ceil(side / (RANGE * least)); side / parts >= least; parts++) {
      const apart = side / parts;
      const lost = lostOf(long, apart) + lostOf(short, apart) + (AT_WALLS * apart) / short;
      if (lost < loss) [best, loss] = [apart, lost];
    }
  return best;
}

/** The share of a side that is not a whole number of distances; a hair under a whole number is not one. */
function lostOf(side: number, apart: number): number {
  return 1 - (Math.floor(side / apart + 1e-9) * apart) / side;
}

type Ends = { readonly from: number; readonly to: number };

/** Where grown rectangles begin at the least, and end at the most. */
function endsOf(one: Turn, other: Turn, way: "x" | "y"): Ends {
  const froms = [one, other].map(({ frame, gapX, gapY }) =>
    way === "x" ? frame.firstAlong - gapX / 2 : frame.firstAcross - gapY / 2,
  );
  const tos = [one, other].map(({ frame, width, height, gapX, gapY }) =>
    way === "x" ? frame.lastAlong + width + gapX / 2 : frame.lastAcross + height + gapY / 2,
  );
  return { from: Math.min(...froms) + SLACK, to: Math.max(...tos) };
}

function evenly({ from, to }: Ends, apart: number, shift: number): readonly number[] {
  const size = Math.max(0, Math.floor((to - from) / apart) + 1);
  return Array.from({ length: size }, (_, index) => from + (index + 1 - shift) * apart);
}
