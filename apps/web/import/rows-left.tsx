import "./import.css";
import { useId } from "react";
import { TableFrame } from "../parts/table-frame.tsx";
import { Show } from "../parts/show.tsx";
import type { RowLeft } from "./sessions-file.ts";

/** A screen does not hold more; the first hundred tell what is wrong with the rest. */
const MOST = 100;

/** Every row that is not used, with its number, its value and why. */
export function RowsLeft({
  left,
  open = false,
}: {
  readonly left: readonly RowLeft[];
  readonly open?: boolean;
}) {
  const title = useId();
  if (left.length === 0) return <p>Every row of it can be used.</p>;
  const count = left.length === 1 ? "1 row is" : `${left.length} rows are`;
  return (
    <Show summary={`${count} left out: see which, and why`} open={open}>
      <TableFrame labelledBy={title}>
        <table className="figures as-it-came">
          <caption id={title}>Rows left out</caption>
          <thead>
            <tr>
              <th scope="col">Row</th>
              <th scope="col">Value</th>
              <th scope="col">Why</th>
            </tr>
          </thead>
          <tbody>
            {left.slice(0, MOST).map((it, at) => (
              // a row may be left out for one thing and stand twice
              // oxlint-disable-next-line react/no-array-index-key
              <tr key={at}>
                <th scope="row">{it.row}</th>
                <td>
                  {it.column === "" ? "" : `${it.column}: `}
                  {it.value === "" ? "nothing" : `“${it.value}”`}
                </td>
                <td>{it.says}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </TableFrame>
      {left.length > MOST ? <p>And {left.length - MOST} more.</p> : null}
    </Show>
  );
}
