import type { CurveRow } from "#app/views";
import { useId, useRef } from "react";
import { PlotRules } from "../class-sheet/plot-rules.tsx";
import { type PlotScale, plotScale } from "../class-sheet/plot-scale.ts";
import { useSheetWidth } from "../floor/use-sheet-width.ts";

type Props = {
  readonly rows: readonly CurveRow[];
  /** "classes a week" */
  readonly what: string;
  readonly money: (major: number) => string;
};

/** What the best week leaves over how much of her week it takes; the week that is shown is marked. */
export function CurvePlot({ rows, what, money }: Props) {
  const frame = useRef<HTMLElement>(null);
  const width = useSheetWidth(frame);
  const title = useId();
  const most = Math.max(...rows.map(({ count }) => count));
  const scale = plotScale(
    rows.map(({ count, at }) => ({ heads: count, amount: at })),
    width,
    { top: 24, tall: 0.4, count: most + 1 },
  );
  const path = rows.map(
    ({ count, at }, index) => `${index === 0 ? "M" : "L"}${scale.x(count)} ${scale.y(at)}`,
  );
  return (
    <figure className="plot" ref={frame}>
      <figcaption className="small soft" id={title}>
        The most that is left a year, by {what}. The ringed dot is the week that is shown.
      </figcaption>
      <svg viewBox={`0 0 ${scale.width} ${scale.height}`} role="img" aria-labelledby={title}>
        <PlotRules scale={scale} ticks={scale.ticks} figure={money} />
        <path className="plot-line" d={path.join("")} />
        {rows.map((row) => (
          <Dot key={row.count} row={row} scale={scale} />
        ))}
        {Array.from({ length: most + 1 }, (_, count) => count)
          .filter((count) => count % scale.step === 0)
          .map((count) => (
            <text
              key={count}
              className="plot-figure"
              x={scale.x(count)}
              y={scale.height - scale.foot + 18}
              textAnchor="middle"
            >
              {count}
            </text>
          ))}
      </svg>
    </figure>
  );
}

function Dot({ row, scale }: { readonly row: CurveRow; readonly scale: PlotScale }) {
  const [x, y] = [scale.x(row.count), scale.y(row.at)];
  return (
    <>
      {row.now ? <circle className="week-now" cx={x} cy={y} r={10} /> : null}
      <circle className="plot-dot" cx={x} cy={y} r={5} />
    </>
  );
}
