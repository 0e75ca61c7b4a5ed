import { edgesOf, type Point, type Polygon } from "#kernels/geometry";
import { outwardOf } from "./floor-walls.ts";
import { SQUARE } from "./hall-frame.ts";
import { cross, direction, dot } from "./vectors.ts";

/** A wall that a tape starts from, and how far out it lies along the way of the tape, in millimetres. */
export type TapeWall = { readonly wall: number; readonly at: number };

/**
 * The outermost wall that runs along the lines on the side where `away` begins, no further in than `before`, so
 * that every line lies beyond it; undefined where none does.
 */
export function wallAlongLines(
  outline: Polygon,
  away: Point,
  along: Point,
  before: number,
): TapeWall | undefined {
  return edgesOf(outline)
    .flatMap(([from, to], wall) => {
      const runsAlong = Math.abs(cross(direction(from, to), along)) < SQUARE;
      const at = (dot(from, away) + dot(to, away)) / 2;
      return runsAlong && dot(outwardOf(outline, wall), away) < 0 && at < before + 1 ? [{ wall, at }] : [];
    })
    .reduce<TapeWall | undefined>(
      (first, it) => (first === undefined || it.at < first.at ? it : first),
      undefined,
    );
}

/**
 * The wall that the line at `level` (along `away`) meets, going back along the line from `start`; undefined where
 * it meets none.
 */
export function wallBefore(
  outline: Polygon,
  away: Point,
  along: Point,
  level: number,
  start: number,
): TapeWall | undefined {
  return wallsMet(outline, away, along, level)
    .filter((it) => it.at < start + 1)
    .reduce<TapeWall | undefined>(
      (nearest, it) => (nearest === undefined || it.at > nearest.at ? it : nearest),
      undefined,
    );
}

function wallsMet(outline: Polygon, away: Point, along: Point, level: number): readonly TapeWall[] {
  return edgesOf(outline).flatMap(([from, to], wall) => {
    const [low, high] = [dot(from, away) - level, dot(to, away) - level];
    if (low > 0 === high > 0) return [];
    return [{ wall, at: dot(from, along) + (low / (low - high)) * (dot(to, along) - dot(from, along)) }];
  });
}

export function runsSquare(outline: Polygon, wall: number, along: Point): boolean {
  return Math.abs(cross(outwardOf(outline, wall), along)) < SQUARE;
}
