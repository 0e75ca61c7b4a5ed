import type { Obstacles } from "./obstacles.ts";

/**
 * Every rectangle is taken this much smaller on each side (millimetres), so that a fit that is exact on
 * paper stays one after turning by 37°, which costs about 1e-10. A thousandth of what the checker allows.
 */
export const SHRINK = 2e-6;

/**
 * For a rectangle of the width with its lower edge anywhere in [low, high − height]: for each obstacle the
 * open span of left edges x that bring it too near, written to spans as [from, to] pairs. A span is empty
 * (from = ∞, to = −∞) where the obstacle is out of reach.
 *
 * An obstacle grown by the rectangle and the disc is convex, so at each height it is one interval; its right
 * end is the furthest that a disc centred on the right side reaches, a concave function of the height on each
 * edge, greatest at `shift` below or above the strip or, where the edge ends sooner, at that end.
 */
export function forbiddenSpans(
  obstacles: Obstacles,
  low: number,
  high: number,
  width: number,
  spans: Float64Array,
): void {
  const {
    count,
    distance,
    low: lows,
    high: highs,
    start,
    middle,
    bottom,
    top,
    x,
    slope,
    shift,
    fromBelow,
  } = obstacles;
  const [stripLow, stripHigh] = [low + SHRINK, high - SHRINK];
  for (let i = 0; i < count; i++) {
    const reach = distance[i]!;
    let from = Infinity;
    let to = -Infinity;
    const [floor, ceiling] = [stripLow - reach, stripHigh + reach];
    if (highs[i]! > floor && lows[i]! < ceiling) {
      const [split, end] = [middle[i]!, start[i + 1]!];
      for (let e = start[i]!; e < end; e++) {
        const [b, t] = [bottom[e]!, top[e]!];
        if (t < floor || b > ceiling) continue;
        const wish = fromBelow[e] === 1 ? stripLow - shift[e]! : stripHigh + shift[e]!;
        const y = wish < b ? b : wish > t ? t : wish;
        const away = y < stripLow ? stripLow - y : y > stripHigh ? y - stripHigh : 0;
        const disc = away < reach ? Math.sqrt(reach * reach - away * away) : 0;
        const edge = x[e]! + slope[e]! * (y - b);
        if (e < split) {
          if (edge + disc > to) to = edge + disc;
        } else if (edge - disc < from) from = edge - disc;
      }
    }
    const empty = from === Infinity || to === -Infinity;
    spans[2 * i] = empty ? Infinity : from - width + SHRINK;
    spans[2 * i + 1] = empty ? -Infinity : to - SHRINK;
  }
}
