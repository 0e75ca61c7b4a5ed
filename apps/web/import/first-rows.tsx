import "./import.css";
import { useId } from "react";
import { TableFrame } from "../parts/table-frame.tsx";
import type { ColumnUse } from "#core/table";
import type { TableSeen } from "./table-ask.ts";

/** The first rows of a table as they came, so that she sees which column is which. */
export function FirstRows<Use extends ColumnUse>({ seen }: { readonly seen: TableSeen<Use> }) {
  const title = useId();
  if (seen.first.length === 0) return null;
  return (
    <TableFrame labelledBy={title}>
      <table className="figures as-it-came">
        <caption id={title}>The first rows, as they came</caption>
        <thead>
          <tr>
            <th scope="col">Row</th>
            {seen.names.map((name, column) => (
              // columns have no other name than their place
              // oxlint-disable-next-line react/no-array-index-key
              <th key={column} scope="col">
                {name}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {seen.first.map(({ row, cells }) => (
            <tr key={row}>
              <th scope="row">{row}</th>
              {seen.names.map((_, column) => (
                // oxlint-disable-next-line react/no-array-index-key
                <td key={column}>{(cells[column] ?? "").slice(0, 60)}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </TableFrame>
  );
}
