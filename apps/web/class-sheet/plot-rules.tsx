import type { PlotScale } from "./plot-scale.ts";

type RulesProps = {
  readonly scale: Pick<PlotScale, "left" | "width" | "y">;
  readonly ticks: readonly number[];
  readonly figure: (tick: number) => string;
};

/** The hairlines across a plot, each with its figure at the left; the line of nothing is the strong one. */
export function PlotRules({ scale, ticks, figure }: RulesProps) {
  return ticks.map((tick) => (
    <g key={tick}>
      <line
        className={tick === 0 ? "plot-nothing" : "plot-rule"}
        x1={scale.left}
        x2={scale.width}
        y1={scale.y(tick)}
        y2={scale.y(tick)}
      />
      <text className="plot-figure" x={scale.left - 6} y={scale.y(tick)} dy="0.35em" textAnchor="end">
        {figure(tick)}
      </text>
    </g>
  ));
}

type FootProps = { readonly scale: PlotScale; readonly heads: readonly number[] };

/** The numbers of people under the bars, as many as there is room for. */
export function HeadsUnderBars({ scale, heads }: FootProps) {
  return heads
    .filter((it) => it % scale.step === 0)
    .map((it) => (
      <text
        key={it}
        className="plot-figure"
        x={scale.x(it)}
        y={scale.height - scale.foot + 18}
        textAnchor="middle"
      >
        {it}
      </text>
    ));
}
