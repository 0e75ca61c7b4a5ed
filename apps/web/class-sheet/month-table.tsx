import type { MonthRow } from "#app/views";

type Props = { readonly months: readonly MonthRow[]; readonly hire: string };

/** The year by month. */
export function MonthTable({ months, hire }: Props) {
  return (
    <table className="figures">
      <caption>The year by month</caption>
      <thead>
        <tr>
          <th scope="col">Month</th>
          <th scope="col">Evenings</th>
          <th scope="col">{hire.charAt(0).toUpperCase() + hire.slice(1)}</th>
          <th scope="col">Leaves</th>
        </tr>
      </thead>
      <tbody>
        {months.map((row) => (
          <tr key={row.month}>
            <th scope="row">{row.month}</th>
            <td>{row.sessions}</td>
            <td>{row.hire}</td>
            <td>{row.leaves}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
