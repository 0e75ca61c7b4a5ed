import { monthDrawing, type PictureMonth, type Shape, type YearPicture } from "#core/year";

type Props = { readonly picture: YearPicture; readonly old: boolean };

/** Twelve months side by side as far as there is room, each with its words for whoever cannot see it. */
export function YearMonths({ picture, old }: Props) {
  return (
    <>
      <ul className="list-plain year-letters">
        {picture.classes.map(({ letter, name, sessions }) => (
          <li key={letter}>
            <strong>{letter}</strong> {name}: {sessions === 1 ? "1 session" : `${sessions} sessions`}
          </li>
        ))}
      </ul>
      <p className="small soft">
        Thick box: a session. Struck through: it falls out. Black corner: public holiday. Line below: school
        holidays. Broken line: your time off.
      </p>
      <div className="year-months" data-old={old || undefined}>
        {picture.months.map((month) => (
          <Month key={month.month} month={month} weekdays={picture.weekdays} />
        ))}
      </div>
    </>
  );
}

function Month({ month, weekdays }: { readonly month: PictureMonth; readonly weekdays: readonly string[] }) {
  const { width, height, shapes } = monthDrawing(month, weekdays);
  const words = month.words.length === 0 ? ["No session falls in it."] : month.words;
  return (
    <svg
      className="year-month"
      viewBox={`-0.5 0 ${width + 1} ${height + 0.5}`}
      role="img"
      aria-label={[month.title, ...words].join(". ")}
    >
      {shapes.map((shape, at) => (
        // shapes have no names, and a month is drawn anew as a whole
        // oxlint-disable-next-line react/no-array-index-key
        <Drawn key={at} shape={shape} />
      ))}
    </svg>
  );
}

function Drawn({ shape }: { readonly shape: Shape }) {
  switch (shape.kind) {
    case "box": {
      const { x, y, width, height, line } = shape;
      return <rect className="year-box" x={x} y={y} width={width} height={height} strokeWidth={line} />;
    }
    case "line": {
      const [x1, y1] = shape.from;
      const [x2, y2] = shape.to;
      const dash = shape.dashed ? { strokeDasharray: "1.2 0.9" } : {};
      return (
        <line className="year-line" x1={x1} y1={y1} x2={x2} y2={y2} strokeWidth={shape.line} {...dash} />
      );
    }
    case "corner": {
      const { x, y, size } = shape;
      return <path className="year-fill" d={`M${x - size} ${y}H${x}V${y + size}Z`} />;
    }
    case "text": {
      const { x, y, size, text, bold, anchor } = shape;
      return (
        <text
          className="year-fill"
          x={x}
          y={y}
          fontSize={size}
          textAnchor={anchor}
          fontWeight={bold ? 700 : 400}
        >
          {text}
        </text>
      );
    }
  }
}
