import type { PathJson } from "#core/cash";
import { useId, useRef } from "react";
import { PlotRules } from "../class-sheet/plot-rules.tsx";
import { useSheetWidth } from "../floor/use-sheet-width.ts";
import { linesScale, type LinesScale } from "../prices/lines-scale.ts";
import type { MoneyWords } from "./money-words-of.ts";
import { MonthsUnder } from "./months-under.tsx";

type Props = { readonly path: PathJson; readonly words: MoneyWords };

const STRIP = 26;

/** Income in its band beside the need, and under it a strip for each class as long as it is kept. */
export function PathPlot({ path, words }: Props) {
  const frame = useRef<HTMLElement>(null);
  const width = useSheetWidth(frame);
  const title = useId();
  const { months, classes } = path;
  const need = Number(path.need);
  const ends = [
    { x: 0, y: need },
    { x: months.length, y: Math.max(need, ...months.map(({ high }) => Number(high))) },
    { x: 0, y: Math.min(...months.map(({ low }) => Number(low))) },
  ];
  const scale = linesScale([ends], width);
  const tall = scale.height + classes.length * STRIP;
  return (
    <figure className="plot" ref={frame}>
      <figcaption className="small soft" id={title}>
        Income a month with the classes that are still taught: the line is the middle, eight chances of ten
        lie in the band. The broken line is the need of {words.amount(path.need)}. The strips below are the
        classes that may go, as long as they are kept.
      </figcaption>
      <svg viewBox={`0 0 ${scale.width} ${tall}`} role="img" aria-labelledby={title}>
        <PlotRules scale={scale} ticks={scale.yTicks} figure={words.major} />
        <polygon className="plot-band money-edge" points={bandOf(path, scale)} />
        <polyline className="plot-line" points={stepsOf(path, scale, "middle").join(" ")} />
        <line
          className="money-level"
          x1={scale.left}
          x2={scale.width}
          y1={scale.y(need)}
          y2={scale.y(need)}
        />
        <MonthsUnder months={months.map(({ month }) => month)} scale={scale} />
        {classes.map(({ id, name }, at) => (
          <Strip key={id} path={path} id={id} name={name} scale={scale} top={scale.height + at * STRIP} />
        ))}
      </svg>
    </figure>
  );
}

/** Steps, since nothing lies between two months. */
function stepsOf({ months }: PathJson, scale: LinesScale, at: "low" | "middle" | "high"): readonly string[] {
  return months.flatMap((month, index) => {
    const y = scale.y(Number(month[at])).toFixed(1);
    return [`${scale.x(index).toFixed(1)},${y}`, `${scale.x(index + 1).toFixed(1)},${y}`];
  });
}

function bandOf(path: PathJson, scale: LinesScale): string {
  return [...stepsOf(path, scale, "high"), ...stepsOf(path, scale, "low").toReversed()].join(" ");
}

type StripProps = {
  readonly path: PathJson;
  readonly id: string;
  readonly name: string;
  readonly scale: LinesScale;
  readonly top: number;
};

function Strip({ path, id, name, scale, top }: StripProps) {
  const months = path.months.filter(({ kept }) => kept.includes(id)).length;
  const wide = scale.x(months) - scale.x(0);
  return (
    <g>
      {months === 0 ? null : (
        <rect className="money-strip" x={scale.x(0)} y={top} width={wide} height={STRIP - 6} />
      )}
      <text className="plot-says" x={scale.x(0) + 6} y={top + STRIP - 11}>
        {name}
      </text>
    </g>
  );
}
