import type { AheadRow, GoingPart, HeldRow } from "#app/views";
import { useId, useRef } from "react";
import { PlotRules } from "../class-sheet/plot-rules.tsx";
import { useSheetWidth } from "../floor/use-sheet-width.ts";
import { type LinesScale, linesScale } from "../prices/lines-scale.ts";
import { monthName } from "../words/dates.ts";

type Props = { readonly part: Extract<GoingPart, { kind: "ready" }> };

/** Sessions that were held, before those ahead: more would press what is to come flat. */
const HELD_SHOWN = 16;
/** A month's name of three letters wants so many pixels. */
const LABEL = 40;

/** The sessions held as dots, those ahead as a line in the band of eight of ten, under the places of the hall. */
export function BandPlot({ part }: Props) {
  const frame = useRef<HTMLElement>(null);
  const width = useSheetWidth(frame);
  const title = useId();
  const held = part.held.slice(-HELD_SHOWN);
  const count = held.length + part.ahead.length;
  const most = Math.max(
    part.places,
    ...held.map(({ heads }) => heads),
    ...part.ahead.map(({ high }) => high),
  );
  const ends = [
    { x: -0.5, y: 0 },
    { x: count - 0.5, y: most },
  ];
  const scale = linesScale([ends], width);
  return (
    <figure className="plot" ref={frame}>
      <figcaption className="small soft" id={title}>
        {held.length === 0 ? "" : "A dot is a session that was held. "}People on mats expected in the sessions
        ahead: the line is the average, eight of ten fall in the band. The broken line is the {part.places}{" "}
        places
        {part.breakEven === null || part.breakEven > most
          ? ""
          : `; the thin one is at ${part.breakEven}, who pay for a session`}
        .
      </figcaption>
      <svg viewBox={`0 0 ${scale.width} ${scale.height}`} role="img" aria-labelledby={title}>
        <PlotRules scale={scale} ticks={scale.yTicks} figure={String} />
        <Band ahead={part.ahead} from={held.length} scale={scale} />
        <Level at={part.places} scale={scale} says={`${part.places} places`} broken />
        {part.breakEven === null || part.breakEven > most ? null : (
          <Level at={part.breakEven} scale={scale} says={`${part.breakEven} pay`} />
        )}
        <Average ahead={part.ahead} from={held.length} scale={scale} />
        <Held held={held} scale={scale} />
        <Months dates={[...held, ...part.ahead].map(({ date }) => date)} scale={scale} />
      </svg>
    </figure>
  );
}

type AheadProps = { readonly ahead: readonly AheadRow[]; readonly from: number; readonly scale: LinesScale };

/** Steps, since nothing lies between two sessions. */
function Band({ ahead, from, scale }: AheadProps) {
  const upper = ahead.map(({ high }, at) => step(scale, from + at, high));
  const lower = ahead.map(({ low }, at) => step(scale, from + at, low)).toReversed();
  const points = [
    ...upper.flatMap(({ left, right, y }) => [`${left} ${y}`, `${right} ${y}`]),
    ...lower.flatMap(({ left, right, y }) => [`${right} ${y}`, `${left} ${y}`]),
  ];
  return <polygon className="plot-band band-edge" points={points.join(" ")} />;
}

function step(scale: LinesScale, at: number, value: number) {
  return {
    left: scale.x(at - 0.5).toFixed(1),
    right: scale.x(at + 0.5).toFixed(1),
    y: scale.y(value).toFixed(1),
  };
}

function Average({ ahead, from, scale }: AheadProps) {
  const points = ahead.flatMap(({ mean }, at) => {
    const { left, right, y } = step(scale, from + at, mean);
    return [`${left} ${y}`, `${right} ${y}`];
  });
  return <polyline className="plot-line" points={points.join(" ")} />;
}

function Held({ held, scale }: { readonly held: readonly HeldRow[]; readonly scale: LinesScale }) {
  return held.map(({ date, heads }, at) => (
    <circle key={date} className="plot-dot" cx={scale.x(at)} cy={scale.y(heads)} r={5} />
  ));
}

type LevelProps = {
  readonly at: number;
  readonly scale: LinesScale;
  readonly says: string;
  readonly broken?: boolean;
};

function Level({ at, scale, says, broken = false }: LevelProps) {
  const y = scale.y(at);
  return (
    <g>
      <line
        className="band-level"
        data-broken={broken || undefined}
        x1={scale.left}
        x2={scale.width}
        y1={y}
        y2={y}
      />
      <text className="plot-says" x={scale.width - 4} y={y - 5} textAnchor="end">
        {says}
      </text>
    </g>
  );
}

/** The month under its first session; weeks without a date are counted. */
function Months({
  dates,
  scale,
}: {
  readonly dates: readonly (string | null)[];
  readonly scale: LinesScale;
}) {
  const each = scale.x(1) - scale.x(0);
  const labels = dates.flatMap((date, at) => {
    const words = labelOf(date, dates[at - 1], at);
    return words === null ? [] : [{ at, words }];
  });
  let last = Number.NEGATIVE_INFINITY;
  return labels.map(({ at, words }) => {
    if ((at - last) * each < LABEL) return null;
    last = at;
    return (
      <text
        key={at}
        className="plot-figure"
        x={scale.x(at)}
        y={scale.height - scale.foot + 18}
        textAnchor="middle"
      >
        {words}
      </text>
    );
  });
}

function labelOf(date: string | null, before: string | null | undefined, at: number): string | null {
  if (date === null) return at % 10 === 0 ? `week ${at + 1}` : null;
  if (before?.slice(0, 7) === date.slice(0, 7)) return null;
  return monthName(Number(date.slice(5, 7))).slice(0, 3);
}
