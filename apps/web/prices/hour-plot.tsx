import type { StudioPart } from "#app/views";
import { useId, useRef } from "react";
import { HeadsUnderBars, PlotRules } from "../class-sheet/plot-rules.tsx";
import { type PlotScale, plotScale } from "../class-sheet/plot-scale.ts";
import { useSheetWidth } from "../floor/use-sheet-width.ts";

type Ready = Extract<StudioPart, { kind: "ready" }>;
type Props = { readonly part: Ready; readonly money: (major: number) => string };

/** Her own hour over the number of people, and the studio's as a line across. */
export function HourPlot({ part, money }: Props) {
  const frame = useRef<HTMLElement>(null);
  const width = useSheetWidth(frame);
  const title = useId();
  const bars = part.rows.map(({ heads, hour }) => ({ heads, amount: hour }));
  const scale = plotScale([...bars, { heads: 0, amount: part.studioHour }], width, {
    top: 16,
    tall: 0.36,
    count: bars.length,
  });
  return (
    <figure className="plot" ref={frame}>
      <figcaption className="small soft" id={title}>
        What an hour of your own class leaves from door to door, by the number of people; filled bars are at
        least {part.studio}, whose hour on average is the line across.
      </figcaption>
      <svg viewBox={`0 0 ${scale.width} ${scale.height}`} role="img" aria-labelledby={title}>
        <PlotRules scale={scale} ticks={scale.ticks} figure={money} />
        {bars.map(({ heads, amount }) => (
          <HourBar
            key={heads}
            heads={heads}
            amount={amount}
            enough={part.equalHeads !== null && heads >= part.equalHeads}
            scale={scale}
          />
        ))}
        <HeadsUnderBars scale={scale} heads={bars.map(({ heads }) => heads)} />
        <line
          className="plot-mark plot-studio"
          x1={scale.left}
          x2={scale.width}
          y1={scale.y(part.studioHour)}
          y2={scale.y(part.studioHour)}
        />
        <text className="plot-says" x={scale.left + 6} y={scale.y(part.studioHour) - 6}>
          {part.studio}
        </text>
      </svg>
    </figure>
  );
}

type BarProps = {
  readonly heads: number;
  readonly amount: number;
  readonly enough: boolean;
  readonly scale: PlotScale;
};

function HourBar({ heads, amount, enough, scale }: BarProps) {
  const from = Math.min(scale.y(0), scale.y(amount));
  return (
    <rect
      className={enough ? "plot-left" : "plot-short"}
      x={scale.x(heads) - scale.bar / 2}
      y={from}
      width={scale.bar}
      height={Math.max(1, Math.abs(scale.y(amount) - scale.y(0)))}
    />
  );
}
