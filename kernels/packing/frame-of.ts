import { hullWalls } from "./hull-walls.ts";
import type { Obstacles, Surroundings } from "./obstacles.ts";
import type { Gaps, Piece } from "./packing-types.ts";
import { type Frame, THINNEST } from "./strips.ts";
import { type TurnedSurroundings, turnSurroundings } from "./turn-surroundings.ts";

/** Half of what rectangles are shrunk by: an exact fit may begin this much outside and still be one. */
const HAIR = 1e-6;

/** The frame whose lines run at `direction` degrees, with the length of the rectangles along or across them. */
export function frameOf(
  piece: Piece,
  gaps: Gaps,
  surroundings: Surroundings,
  direction: number,
  along: "length" | "width",
): Frame {
  return frameInTurned(piece, gaps, turnSurroundings(surroundings, direction), along);
}

/** The same for surroundings that are turned already. */
export function frameInTurned(
  piece: Piece,
  gaps: Gaps,
  { hull, bounds, obstacles, shapes }: TurnedSurroundings,
  along: "length" | "width",
): Frame {
  const [width, height] = along === "length" ? [piece.length, piece.width] : [piece.width, piece.length];
  const [gapAlong, gapAcross] = along === "length" ? [gaps.end, gaps.side] : [gaps.side, gaps.end];
  const firstAcross = bounds.bottom + gaps.wall;
  const lastAcross = exactFit(firstAcross, bounds.top - gaps.wall - height);
  let breaks: readonly number[] | null = null;
  return {
    walls: hullWalls(hull, width, height, gaps.wall),
    obstacles,
    shapes,
    width,
    height,
    pitchAlong: width + gapAlong,
    pitchAcross: height + gapAcross,
    left: bounds.left,
    bottom: bounds.bottom,
    firstAlong: bounds.left + gaps.wall - HAIR,
    lastAlong: bounds.right - gaps.wall - width + HAIR,
    firstAcross,
    lastAcross,
    // most frames are left before their first cut
    get breaks() {
      return (breaks ??= breaksOf(obstacles, height, firstAcross, lastAcross));
    },
  };
}

/** The last offset; the first itself where only the rounding of a turn puts it before that. */
function exactFit(first: number, last: number): number {
  return last < first && last > first - HAIR ? first : last;
}

/**
 * Offsets at which an obstacle comes into reach of the strip or leaves it, each with a close neighbour on
 * both sides: the count may jump there and only there on an upright floor.
 */
function breaksOf(obstacles: Obstacles, height: number, first: number, last: number): readonly number[] {
  const found: number[] = [];
  for (let i = 0; i < obstacles.count; i++) {
    const reach = obstacles.distance[i]!;
    for (const y of [obstacles.low[i]!, obstacles.high[i]!])
      for (const at of [y - reach - height, y - height, y, y + reach])
        if (at > first && at < last) found.push(at - THINNEST, at, at + THINNEST);
  }
  return found.sort((a, b) => a - b);
}
