import type { DrawnClass, DrawnDay, WeekDrawing } from "#app/views";
import type { Locale } from "#core/words";
import { useId, useRef } from "react";
import { useSheetWidth } from "../floor/use-sheet-width.ts";
import { type WeekScale, weekScale, wrapped } from "./week-scale.ts";

type Props = {
  readonly drawing: WeekDrawing;
  readonly locale: Locale;
  /** which week it is, for whoever hears the picture */
  readonly called: string;
};

/** Seven days over the hours: filled where she teaches, outlined while she is in the hall, narrow on the way. */
export function WeekPicture({ drawing, locale, called }: Props) {
  const frame = useRef<HTMLElement>(null);
  const width = useSheetWidth(frame);
  const title = useId();
  const scale = weekScale(drawing, width);
  const busy = drawing.days.some((day) => day.busy.length > 0);
  return (
    <figure className="plot week-picture" ref={frame}>
      <figcaption className="small soft" id={title}>
        {called}. Filled: teaching. Outlined: in the hall. Narrow: on the way or waiting.{" "}
        {busy ? "Broken outline: fixed for other things. " : ""}The numbers are those of the list.
      </figcaption>
      <svg viewBox={`0 0 ${scale.width} ${scale.height}`} role="img" aria-labelledby={title}>
        <Hours scale={scale} locale={locale} />
        {drawing.days.map((day) => (
          <Day key={day.weekday} day={day} scale={scale} />
        ))}
      </svg>
    </figure>
  );
}

function Hours({ scale, locale }: { readonly scale: WeekScale; readonly locale: Locale }) {
  return scale.hours.map((hour) => (
    <g key={hour}>
      <line
        className="plot-rule"
        x1={scale.left}
        x2={scale.width}
        y1={scale.y(hour * 60)}
        y2={scale.y(hour * 60)}
      />
      <text className="plot-figure" x={scale.left - 6} y={scale.y(hour * 60)} dy="0.35em" textAnchor="end">
        {hourWords(hour, locale)}
      </text>
    </g>
  ));
}

/** "18", "6 pm" where clocks have twelve hours; hours after midnight go on from nought. */
function hourWords(hour: number, locale: Locale): string {
  const ofDay = (hour + 24) % 24;
  if (locale !== "en-US") return String(ofDay);
  return `${ofDay % 12 === 0 ? 12 : ofDay % 12} ${ofDay < 12 ? "am" : "pm"}`;
}

function Day({ day, scale }: { readonly day: DrawnDay; readonly scale: WeekScale }) {
  const x = scale.x(day.weekday);
  const { column } = scale;
  return (
    <g>
      <text className="week-day" x={x + column / 2} y={16} textAnchor="middle">
        {scale.named ? day.name : day.name.slice(0, 2)}
      </text>
      {day.spans.map(({ kind, from, until }) => {
        const inset = kind === "way" ? column * 0.36 : 0;
        return (
          <rect
            key={`${kind} ${from} ${until}`}
            className={`week-${kind}`}
            x={x + inset}
            y={scale.y(from)}
            width={column - 2 * inset}
            height={Math.max(1, scale.y(until) - scale.y(from))}
          />
        );
      })}
      {day.classes.map((it) => (
        <ClassLabel key={it.id} one={it} x={x} scale={scale} />
      ))}
    </g>
  );
}

type LabelProps = { readonly one: DrawnClass; readonly x: number; readonly scale: WeekScale };

/** As much of the name as the filled box holds; its number always. */
function ClassLabel({ one, x, scale }: LabelProps) {
  const top = scale.y(one.from);
  const room = Math.max(1, Math.floor((scale.y(one.until) - top - 4) / LINE));
  const lines = scale.named
    ? wrapped(`${one.number} ${one.name}`, Math.floor((scale.column - 8) / LETTER), room)
    : [String(one.number)];
  const middle = (scale.y(one.until) + top) / 2;
  return (
    <text
      className="week-name"
      x={scale.named ? x + 5 : x + scale.column / 2}
      textAnchor={scale.named ? "start" : "middle"}
    >
      {lines.map((line, at) => (
        <tspan
          key={line}
          x={scale.named ? x + 5 : x + scale.column / 2}
          y={scale.named ? top + LINE * (at + 1) - 2 : middle + 5}
        >
          {line}
        </tspan>
      ))}
    </text>
  );
}

/** pixels of a line, and of an ordinary letter at 14 pixels */
const LINE = 16;
const LETTER = 7.6;
