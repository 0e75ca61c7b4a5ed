import type { HeadsRow } from "#app/views";
import { useId, useRef } from "react";
import { HeadsUnderBars, PlotRules } from "./plot-rules.tsx";
import { useSheetWidth } from "../floor/use-sheet-width.ts";
import { plotScale, type PlotScale } from "./plot-scale.ts";

type Props = {
  readonly rows: readonly HeadsRow[];
  readonly money: (major: number) => string;
};

/** What an evening leaves over the number of people: bars up and down from nothing. Words say the same. */
export function HeadsPlot({ rows, money }: Props) {
  const frame = useRef<HTMLDivElement>(null);
  const width = useSheetWidth(frame);
  const title = useId();
  const scale = plotScale(rows, width);
  return (
    <figure className="plot" ref={frame}>
      <figcaption className="small soft" id={title}>
        What an evening leaves, by the number of people
      </figcaption>
      <svg viewBox={`0 0 ${scale.width} ${scale.height}`} role="img" aria-labelledby={title}>
        <PlotRules scale={scale} ticks={scale.ticks} figure={money} />
        {rows.map((row) => (
          <Bar key={row.heads} row={row} scale={scale} />
        ))}
        <HeadsUnderBars scale={scale} heads={rows.map(({ heads }) => heads)} />
        {rows.flatMap((row) =>
          row.marks.map((mark, index) => (
            <Mark key={mark} row={row} says={mark} scale={scale} line={index + lineOf(rows, row)} />
          )),
        )}
      </svg>
    </figure>
  );
}

type Placed = { readonly row: HeadsRow; readonly scale: PlotScale };

function Bar({ row, scale }: Placed) {
  const from = Math.min(scale.y(0), scale.y(row.amount));
  const tall = Math.max(1, Math.abs(scale.y(row.amount) - scale.y(0)));
  return (
    <rect
      className={row.amount < 0 ? "plot-short" : "plot-left"}
      data-marked={row.marks.length > 0 || undefined}
      x={scale.x(row.heads) - scale.bar / 2}
      y={from}
      width={scale.bar}
      height={tall}
    />
  );
}

/** A mark stands above the plot on a thin line down to its bar. */
function Mark({ row, says, scale, line }: Placed & { readonly says: string; readonly line: number }) {
  const at = scale.x(row.heads);
  const right = at > scale.width * 0.6;
  const top = 14 + line * 20;
  return (
    <g>
      <line
        className="plot-mark"
        x1={at}
        x2={at}
        y1={top - 10}
        y2={Math.min(scale.y(row.amount), scale.y(0))}
      />
      <text className="plot-says" x={right ? at - 5 : at + 5} y={top} textAnchor={right ? "end" : "start"}>
        {row.heads}: {says}
      </text>
    </g>
  );
}

/** Marks of earlier rows take the lines above. */
function lineOf(rows: readonly HeadsRow[], row: HeadsRow): number {
  return rows.filter((it) => it.heads < row.heads).reduce((sum, it) => sum + it.marks.length, 0);
}
