import type { HeadsRow } from "#app/views";

/** What an evening takes and leaves for each number of people. */
export function HeadsTable({ rows }: { readonly rows: readonly HeadsRow[] }) {
  return (
    <table className="figures">
      <caption>An evening by the number of people</caption>
      <thead>
        <tr>
          <th scope="col">People</th>
          <th scope="col">Takings</th>
          <th scope="col">Leaves</th>
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <tr key={row.heads} data-marked={row.marks.length > 0 || undefined}>
            <th scope="row">
              {row.heads}
              {row.marks.length > 0 ? <span className="figures-mark"> {row.marks.join(", ")}</span> : null}
            </th>
            <td>{row.takings}</td>
            <td>{row.leaves}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
