import { edgesOf, type Point, type Polygon } from "#kernels/geometry";
import { added, dot, scaled } from "../vectors.ts";

/**
 * The middle of the longest part of a straight line that lies inside the walls. The line runs along `along` at `level`
 * along `away`, both one long and square to one another; millimetres. On a floor it does not meet: the point of the
 * line nearest the first corner.
 */
export function longestPart(outline: Polygon, along: Point, away: Point, level: number): Point {
  const met = edgesOf(outline)
    .flatMap(([from, to]) => {
      const [low, high] = [dot(from, away) - level, dot(to, away) - level];
      if (low > 0 === high > 0) return [];
      return [dot(from, along) + (low / (low - high)) * (dot(to, along) - dot(from, along))];
    })
    .sort((a, b) => a - b);
  let best: readonly [number, number] = [dot(outline[0] ?? [0, 0], along), -Infinity];
  for (let part = 0; part + 1 < met.length; part += 2) {
    const [from, to] = [met[part] ?? 0, met[part + 1] ?? 0];
    if (to - from > best[1]) best = [(from + to) / 2, to - from];
  }
  return added(scaled(along, best[0]), scaled(away, level));
}
