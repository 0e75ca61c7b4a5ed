import { roundTicks } from "../class-sheet/plot-scale.ts";

type Point = { readonly x: number; readonly y: number };

export type LinesScale = {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly top: number;
  readonly foot: number;
  readonly xTicks: readonly number[];
  readonly yTicks: readonly number[];
  readonly x: (value: number) => number;
  readonly y: (value: number) => number;
  /** whether a value of x lies in the drawing */
  readonly holds: (value: number) => boolean;
};

const LEFT = 64;
const RIGHT = 12;
const TOP = 24;
const FOOT = 28;
/** a figure like £12.50 wants so many pixels */
const FIGURE = 64;

/**
 * Where lines over a price stand, in pixels of a drawing `width` wide. What lies far below nothing is left out:
 * a curve that falls to −500 would press what matters flat.
 */
export function linesScale(lines: readonly (readonly Point[])[], width: number): LinesScale {
  const points = lines.flat();
  const most = Math.max(0, ...points.map(({ y }) => y));
  const least = Math.min(0, ...points.map(({ y }) => y));
  const yTicks = roundTicks(most > 0 ? Math.max(least, -most) : least, most);
  const [low = 0, high = 1] = [yTicks[0], yTicks.at(-1)];
  const from = Math.min(...points.map(({ x }) => x));
  const until = Math.max(...points.map(({ x }) => x));
  const height = Math.round(Math.min(380, Math.max(240, width * 0.45)));
  const x = (value: number): number => LEFT + ((value - from) / (until - from || 1)) * (width - LEFT - RIGHT);
  const y = (value: number): number =>
    TOP + ((high - Math.max(low, value)) / (high - low)) * (height - TOP - FOOT);
  return {
    width,
    height,
    left: LEFT,
    top: TOP,
    foot: FOOT,
    xTicks: thinned(
      roundTicks(from, until).filter((tick) => tick >= from && tick <= until),
      width,
    ),
    yTicks,
    x,
    y,
    holds: (value) => value >= from && value <= until,
  };
}

function thinned(ticks: readonly number[], width: number): readonly number[] {
  const room = Math.max(2, Math.floor((width - LEFT) / FIGURE));
  const every = Math.ceil(ticks.length / room);
  return ticks.filter((_, at) => at % every === 0);
}
