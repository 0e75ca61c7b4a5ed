import { type CurveRow, curveRows, type WeekWriter } from "#app/views";
import type { PointJson, WeekHead } from "#core/week";
import { useId } from "react";
import { TableFrame } from "../parts/table-frame.tsx";
import { CurvePlot } from "./curve-plot.tsx";

type Props = {
  readonly by: "classes" | "evenings";
  readonly points: readonly PointJson[] | null;
  readonly week: WeekHead;
  readonly write: WeekWriter;
  readonly money: (major: number) => string;
  /** tries the week with at most so many */
  readonly tryCount: (count: number) => void;
};

const words = {
  classes: { title: "By classes a week", what: "classes a week", column: "Classes a week" },
  evenings: { title: "By evenings", what: "evenings a week", column: "Evenings a week" },
} as const;

/** One trade-off: a plot, and beside it the table that says the same. */
export function CurvePart({ by, points, week, write, money, tryCount }: Props) {
  const { title, what, column } = words[by];
  if (points === null) return <p className="soft">{title}: not worked out yet.</p>;
  const rows = curveRows(points, week.load[by], write);
  if (rows.length === 0) return <p className="soft">{title}: no class leaves anything.</p>;
  return (
    <div className="week-curve">
      <h3>{title}</h3>
      <CurvePlot rows={rows} what={what} money={money} />
      <CurveTable rows={rows} column={column} what={what} tryCount={tryCount} />
    </div>
  );
}

type TableProps = {
  readonly rows: readonly CurveRow[];
  readonly column: string;
  readonly what: string;
  readonly tryCount: (count: number) => void;
};

function CurveTable({ rows, column, what, tryCount }: TableProps) {
  const id = useId();
  return (
    <TableFrame labelledBy={id}>
      <table className="figures week-table">
        <caption id={id}>The most that is left a year, by {what}; with fewer, less is left</caption>
        <thead>
          <tr>
            <th scope="col">{column}</th>
            <th scope="col">Leaves</th>
            <th scope="col">More than the row above</th>
            <th scope="col">Try</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.count} data-marked={row.now || undefined}>
              <th scope="row">
                {row.count}
                {row.now ? " (as shown)" : ""}
                <span className="compare-about">{row.classes}</span>
              </th>
              <td>{row.leaves}</td>
              <td>{row.more}</td>
              <td>
                <button type="button" className="link-button" onClick={() => tryCount(row.count)}>
                  at most {row.count}
                </button>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </TableFrame>
  );
}
