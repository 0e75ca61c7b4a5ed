import type { HeadsRow } from "#app/views";

export type PlotScale = {
  readonly width: number;
  readonly height: number;
  /** room for the figures at the left and under the bars */
  readonly left: number;
  readonly foot: number;
  readonly bar: number;
  /** every how many heads a figure stands under the bars */
  readonly step: number;
  readonly ticks: readonly number[];
  readonly x: (heads: number) => number;
  readonly y: (amount: number) => number;
};

const LEFT = 64;
const FOOT = 28;
/** three marks, each on its own line */
const TOP = 72;

export type PlotShape = {
  /** room above the bars, in pixels */
  readonly top?: number;
  /** height ÷ width, where the sheet is neither very narrow nor very wide */
  readonly tall?: number;
  /** how many bars stand side by side, where there are more amounts than bars */
  readonly count?: number;
};

/** Where everything of the plot stands, in pixels of a drawing `width` wide. Amounts in major units. */
export function plotScale(
  rows: readonly Pick<HeadsRow, "heads" | "amount">[],
  width: number,
  { top = TOP, tall = 0.5, count = rows.length }: PlotShape = {},
): PlotScale {
  const height = Math.round(Math.min(420, Math.max(tall * 520, width * tall)));
  const amounts = rows.map((it) => it.amount);
  const ticks = roundTicks(Math.min(0, ...amounts), Math.max(0, ...amounts));
  const [least = 0, most = 1] = [ticks[0], ticks.at(-1)];
  const each = (width - LEFT) / Math.max(1, count);
  return {
    width,
    height,
    left: LEFT,
    foot: FOOT,
    bar: Math.max(2, each * 0.7),
    step: stepFor(each),
    ticks,
    x: (heads) => LEFT + each * (heads + 0.5),
    y: (amount) => top + ((most - amount) / (most - least)) * (height - top - FOOT),
  };
}

/** Round figures from below the least to above the most, four to eight of them, nothing among them. */
export function roundTicks(least: number, most: number): readonly number[] {
  const span = most - least;
  if (!(span > 0)) return [0, 1];
  const rough = span / 5;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 5, 10].map((it) => it * power).find((it) => it >= rough) ?? 10 * power;
  const first = Math.floor(least / step);
  const last = Math.ceil(most / step);
  return Array.from({ length: last - first + 1 }, (_, index) =>
    Number(((first + index) * step).toPrecision(12)),
  );
}

/** Two figures of 18 px want 26 px between their middles. */
function stepFor(each: number): number {
  return [1, 2, 5, 10, 20].find((step) => each * step >= 26) ?? 20;
}
