import type { CurvePart, DrawnCurve } from "#app/views";
import { useId, useRef } from "react";
import { PlotRules } from "../class-sheet/plot-rules.tsx";
import { useSheetWidth } from "../floor/use-sheet-width.ts";
import { type LinesScale, linesScale } from "./lines-scale.ts";

type Props = {
  readonly part: Extract<CurvePart, { kind: "ready" }>;
  readonly money: (major: number) => string;
};

/** What an evening leaves over the single price, by both curves, with the range that both are content with. */
export function CurvePlot({ part, money }: Props) {
  const frame = useRef<HTMLElement>(null);
  const width = useSheetWidth(frame);
  const title = useId();
  const { curves, agreed, now } = part;
  const scale = linesScale(
    curves.map(({ points }) => points.map(({ price, leaves }) => ({ x: price, y: leaves }))),
    width,
  );
  return (
    <figure className="plot" ref={frame}>
      <figcaption className="small soft" id={title}>
        What an evening leaves, by the single price. {curves.map(curveWords).join("; ")}; a dot is the most.
        {agreed === null ? "" : " The band is within 5 % of the most on both."}
      </figcaption>
      <svg viewBox={`0 0 ${scale.width} ${scale.height}`} role="img" aria-labelledby={title}>
        {agreed === null ? null : (
          <rect
            className="plot-band"
            x={scale.x(agreed.from)}
            y={scale.top}
            width={Math.max(2, scale.x(agreed.until) - scale.x(agreed.from))}
            height={scale.height - scale.foot - scale.top}
          />
        )}
        <Grid scale={scale} money={money} />
        {curves.map((curve, at) => (
          <CurveLine key={curve.name} curve={curve} scale={scale} dashed={at === 1} />
        ))}
        {now === null || !scale.holds(now.price) ? null : (
          <Now at={scale.x(now.price)} scale={scale} says={now.says} />
        )}
      </svg>
    </figure>
  );
}

function curveWords({ name }: DrawnCurve, at: number): string {
  return `${at === 0 ? "The whole line is" : "the broken line is"} ${name}`;
}

function Grid({ scale, money }: { readonly scale: LinesScale; readonly money: (major: number) => string }) {
  return (
    <>
      <PlotRules scale={scale} ticks={scale.yTicks} figure={money} />
      {scale.xTicks.map((tick) => (
        <text
          key={tick}
          className="plot-figure"
          x={scale.x(tick)}
          y={scale.height - scale.foot + 18}
          textAnchor="middle"
        >
          {money(tick)}
        </text>
      ))}
    </>
  );
}

type LineProps = { readonly curve: DrawnCurve; readonly scale: LinesScale; readonly dashed: boolean };

function CurveLine({ curve, scale, dashed }: LineProps) {
  const path = curve.points
    .map(
      ({ price, leaves }, at) =>
        `${at === 0 ? "M" : "L"}${scale.x(price).toFixed(1)} ${scale.y(leaves).toFixed(1)}`,
    )
    .join("");
  const best = curve.points.find(({ price }) => price === curve.best);
  return (
    <g>
      <path className="plot-line" data-broken={dashed || undefined} d={path} />
      {best === undefined ? null : (
        <circle className="plot-dot" cx={scale.x(best.price)} cy={scale.y(best.leaves)} r={5} />
      )}
    </g>
  );
}

function Now({
  at,
  scale,
  says,
}: {
  readonly at: number;
  readonly scale: LinesScale;
  readonly says: string;
}) {
  const right = at > scale.width * 0.6;
  return (
    <g>
      <line className="plot-mark" x1={at} x2={at} y1={4} y2={scale.height - scale.foot} />
      <text className="plot-says" x={right ? at - 5 : at + 5} y={14} textAnchor={right ? "end" : "start"}>
        now {says}
      </text>
    </g>
  );
}
