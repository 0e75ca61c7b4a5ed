import type { Mark, TextMark } from "#core/papers";
import { MM_PER_POINT, textWidth } from "#core/papers";
import { memo } from "react";

type Props = { readonly marks: readonly Mark[] };

/** The marks of a paper as they stand on it, in millimetres. */
export const PaperMarks = memo(function PaperMarks({ marks }: Props) {
  return marks.map((mark, index) => <OneMark key={index} mark={mark} />);
});

function OneMark({ mark }: { readonly mark: Mark }) {
  switch (mark.kind) {
    case "line":
      return (
        <polyline
          className="paper-stroke"
          points={pointsOf(mark.points)}
          strokeWidth={mark.width}
          strokeDasharray={mark.dash?.join(" ")}
        />
      );
    case "shape":
      return (
        <polygon
          className={mark.width > 0 ? `paper-stroke paper-${mark.fill}` : `paper-${mark.fill}`}
          points={pointsOf(mark.points)}
          strokeWidth={mark.width}
          strokeDasharray={mark.dash?.join(" ")}
        />
      );
    case "text":
      return <Words mark={mark} />;
  }
}

function Words({ mark }: { readonly mark: TextMark }) {
  const [x, y] = mark.at;
  const size = mark.size * MM_PER_POINT;
  return (
    <g transform={mark.turn === 0 ? undefined : `rotate(${mark.turn} ${x} ${y})`}>
      {mark.onPaper === true ? <Ground mark={mark} size={size} /> : null}
      <text
        className="paper-ink"
        x={x}
        y={y}
        fontSize={size}
        fontWeight={mark.weight === "bold" ? 700 : 400}
        textAnchor={mark.anchor}
      >
        {mark.text}
      </text>
    </g>
  );
}

/** Bare paper under a text of the drawing, so that it can be read over hatching. */
function Ground({ mark, size }: { readonly mark: TextMark; readonly size: number }) {
  const width = textWidth(mark.text, mark.size, mark.weight);
  return (
    <rect
      className="paper-paper"
      x={mark.at[0] - width / 2 - 0.4}
      y={mark.at[1] - size * 0.76}
      width={width + 0.8}
      height={size * 0.95}
    />
  );
}

function pointsOf(points: Extract<Mark, { kind: "line" }>["points"]): string {
  return points.map(([x, y]) => `${x.toFixed(3)},${y.toFixed(3)}`).join(" ");
}
