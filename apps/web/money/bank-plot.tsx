import type { MoneyJson } from "#core/cash";
import { useId, useRef } from "react";
import { PlotRules } from "../class-sheet/plot-rules.tsx";
import { useSheetWidth } from "../floor/use-sheet-width.ts";
import { linesScale, type LinesScale } from "../prices/lines-scale.ts";
import { MonthsUnder } from "./months-under.tsx";
import { monthPoints } from "./month-points.ts";
import type { MoneyWords } from "./money-words-of.ts";

type Props = { readonly json: MoneyJson; readonly words: MoneyWords };

/** The balance at each month's end as a line in the band of the cases; the table beside says the same. */
export function BankPlot({ json, words }: Props) {
  const frame = useRef<HTMLElement>(null);
  const width = useSheetWidth(frame);
  const title = useId();
  const lines = monthPoints(json);
  const scale = linesScale([lines.low, lines.middle, lines.high, [lines.lowest]], width);
  const taxed = json.months.flatMap(({ tax }, at) => (Number(tax) > 0 ? [at] : []));
  return (
    <figure className="plot" ref={frame}>
      <figcaption className="small soft" id={title}>
        What is in the bank on the lowest day of each month and at its end
        {json.uncertain ? "; in the band between the low and the high case" : ""}. The dot is the lowest day
        of all.
        {taxed.length === 0 ? "" : " A thin upright line is a month in which tax is paid."}
      </figcaption>
      <svg viewBox={`0 0 ${scale.width} ${scale.height}`} role="img" aria-labelledby={title}>
        <PlotRules scale={scale} ticks={scale.yTicks} figure={words.major} />
        {json.uncertain ? (
          <polygon
            className="plot-band money-edge"
            points={[...lines.high, ...lines.low.toReversed()].map((it) => at(scale, it)).join(" ")}
          />
        ) : null}
        {taxed.map((month) => (
          <line
            key={month}
            className="plot-mark"
            x1={scale.x(month + 0.5)}
            x2={scale.x(month + 0.5)}
            y1={scale.top}
            y2={scale.height - scale.foot}
          />
        ))}
        <polyline className="plot-line" points={lines.middle.map((it) => at(scale, it)).join(" ")} />
        <circle className="plot-dot" cx={scale.x(lines.lowest.x)} cy={scale.y(lines.lowest.y)} r={6} />
        <MonthsUnder months={json.months.map(({ month }) => month)} scale={scale} />
      </svg>
    </figure>
  );
}

function at(scale: LinesScale, { x, y }: { readonly x: number; readonly y: number }): string {
  return `${scale.x(x).toFixed(1)},${scale.y(y).toFixed(1)}`;
}
