import "./coming.css";
import type { Stays } from "#core/outlook";
import { useId, useRef } from "react";
import { PlotRules } from "../class-sheet/plot-rules.tsx";
import { useSheetWidth } from "../floor/use-sheet-width.ts";
import { type LinesScale, linesScale } from "../prices/lines-scale.ts";
import { stairs } from "./stairs.ts";

/** Of those who begin, how many of 100 are still coming after so many teaching weeks, with its band. */
export function StaysPlot({ curve }: Pick<Stays, "curve">) {
  const frame = useRef<HTMLElement>(null);
  const width = useSheetWidth(frame);
  const title = useId();
  const last = curve.at(-1)?.period ?? 1;
  const ends = [
    { x: 0, y: 0 },
    { x: last, y: 100 },
  ];
  const scale = linesScale([ends], width);
  const value = stairs(curve.map((it) => ({ period: it.period, share: it.value })));
  const low = stairs(curve.map((it) => ({ period: it.period, share: it.low })));
  const high = stairs(curve.map((it) => ({ period: it.period, share: it.high })));
  return (
    <figure className="plot" ref={frame}>
      <figcaption className="small soft" id={title}>
        Of 100 who begin, how many still come after so many teaching weeks. The line is what was seen; the
        band holds it four times of five.
      </figcaption>
      <svg viewBox={`0 0 ${scale.width} ${scale.height}`} role="img" aria-labelledby={title}>
        <polygon className="stays-band" points={pointsOf([...high, ...low.toReversed()], scale)} />
        <PlotRules scale={scale} ticks={scale.yTicks} figure={String} />
        {scale.xTicks.filter(Number.isInteger).map((tick) => (
          <text
            key={tick}
            className="plot-figure"
            x={scale.x(tick)}
            y={scale.height - scale.foot + 18}
            textAnchor="middle"
          >
            {tick}
          </text>
        ))}
        <polyline className="plot-line" points={pointsOf(value, scale)} />
      </svg>
    </figure>
  );
}

type Point = { readonly x: number; readonly y: number };

function pointsOf(points: readonly Point[], scale: LinesScale): string {
  return points.map(({ x, y }) => `${scale.x(x).toFixed(1)} ${scale.y(y).toFixed(1)}`).join(" ");
}
