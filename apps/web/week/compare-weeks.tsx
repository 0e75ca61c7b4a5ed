import type { WeekComparison } from "#app/views";
import { useId } from "react";
import { TableFrame } from "../parts/table-frame.tsx";

type Props = { readonly comparison: WeekComparison };

/** The present week and the one on trial, figure beside figure. */
export function CompareWeeks({ comparison }: Props) {
  const id = useId();
  return (
    <div className="stack-close">
      <output className="answer">{comparison.says}</output>
      <p>{comparison.changes}</p>
      <TableFrame labelledBy={id}>
        <table className="figures">
          <caption id={id}>The present week and the week on trial</caption>
          <thead>
            <tr>
              <th scope="col">What</th>
              <th scope="col">Present</th>
              <th scope="col">On trial</th>
              <th scope="col">Difference</th>
            </tr>
          </thead>
          <tbody>
            {comparison.rows.map((row) => (
              <tr key={row.label} data-marked={row.more === "" ? undefined : true}>
                <th scope="row">{row.label}</th>
                <td>{row.now}</td>
                <td>{row.trial}</td>
                <td>{row.more === "" ? "the same" : row.more}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </TableFrame>
    </div>
  );
}
