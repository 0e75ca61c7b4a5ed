import type { ChanceRow } from "#app/views";
import { useId, useRef } from "react";
import { HeadsUnderBars, PlotRules } from "../class-sheet/plot-rules.tsx";
import { type PlotScale, plotScale } from "../class-sheet/plot-scale.ts";
import { useSheetWidth } from "../floor/use-sheet-width.ts";

type Props = { readonly rows: readonly ChanceRow[]; readonly uneven: boolean };

/** How often each number of people comes: open bars lose, filled ones pay; a line across is chance alone. */
export function ChancePlot({ rows, uneven }: Props) {
  const frame = useRef<HTMLElement>(null);
  const width = useSheetWidth(frame);
  const title = useId();
  const highest = rows.map((row) => ({
    heads: row.heads,
    amount: Math.max(row.chance, uneven ? row.plainChance : 0) * 100,
  }));
  const scale = plotScale(highest, width, { top: 16, tall: 0.36 });
  return (
    <figure className="plot" ref={frame}>
      <figcaption className="small soft" id={title}>
        How many evenings of 100 have each number of people. Open bars lose money, filled ones pay
        {uneven ? "; the line across is how it would be by chance alone" : ""}.
      </figcaption>
      <svg viewBox={`0 0 ${scale.width} ${scale.height}`} role="img" aria-labelledby={title}>
        <PlotRules scale={scale} ticks={scale.ticks} figure={String} />
        {rows.map((row) => (
          <ChanceBar key={row.heads} row={row} scale={scale} uneven={uneven} />
        ))}
        <HeadsUnderBars scale={scale} heads={rows.map(({ heads }) => heads)} />
      </svg>
    </figure>
  );
}

type BarProps = { readonly row: ChanceRow; readonly scale: PlotScale; readonly uneven: boolean };

function ChanceBar({ row, scale, uneven }: BarProps) {
  const top = scale.y(row.chance * 100);
  const left = scale.x(row.heads) - scale.bar / 2;
  const plain = scale.y(row.plainChance * 100);
  return (
    <g>
      <rect
        className={row.loses ? "plot-short" : "plot-left"}
        x={left}
        y={top}
        width={scale.bar}
        height={Math.max(0.5, scale.y(0) - top)}
      />
      {uneven ? (
        <line className="plot-across" x1={left - 2} x2={left + scale.bar + 2} y1={plain} y2={plain} />
      ) : null}
    </g>
  );
}
