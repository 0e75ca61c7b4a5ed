import type { LinesScale } from "../prices/lines-scale.ts";
import { monthName } from "../words/dates.ts";

/** A month's name of three letters wants so many pixels. */
const LABEL = 40;

/** The months under a plot, as many as there is room for, each in its middle. */
export function MonthsUnder({
  months,
  scale,
}: {
  readonly months: readonly string[];
  readonly scale: LinesScale;
}) {
  const each = scale.x(1) - scale.x(0);
  const every = Math.max(1, Math.ceil(LABEL / each));
  return months.map((month, at) =>
    at % every === 0 ? (
      <text
        key={month}
        className="plot-figure"
        x={scale.x(at + 0.5)}
        y={scale.height - scale.foot + 18}
        textAnchor="middle"
      >
        {monthName(Number(month.slice(5))).slice(0, 3)}
      </text>
    ) : null,
  );
}
