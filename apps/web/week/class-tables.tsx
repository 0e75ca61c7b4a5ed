import { type ChosenRow, type RejectedRow } from "#app/views";
import { useId } from "react";
import { TableFrame } from "../parts/table-frame.tsx";

type ChosenProps = {
  readonly rows: readonly ChosenRow[];
  /** tries the week without one */
  readonly without: (id: string) => void;
};

/** What each class of the week earns an hour from door to door, and what would be without it. */
export function ChosenTable({ rows, without }: ChosenProps) {
  const id = useId();
  return (
    <>
      <TableFrame labelledBy={id}>
        <table className="figures">
          <caption id={id}>What each class of the week does for it</caption>
          <thead>
            <tr>
              <th scope="col">Class</th>
              <th scope="col">An hour</th>
              <th scope="col">A year</th>
              <th scope="col">Takes a week</th>
            </tr>
          </thead>
          <tbody>
            {rows.map((row) => (
              <tr key={row.id}>
                <th scope="row">{row.name}</th>
                <td>{row.perHour}</td>
                <td>{row.adds}</td>
                <td>{row.hours}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </TableFrame>
      <p className="small soft">
        An hour is counted from door to door with preparation, as the others stay: the way that only this
        class causes. A year is what would go with it while the others stay.
      </p>
      <ul className="list-plain ledger" aria-label="Without each of them">
        {rows.map((row) => (
          <li key={row.id}>
            <p className="week-says">
              <strong>{row.name}.</strong> {row.says}{" "}
              <button
                type="button"
                className="link-button"
                aria-label={`Try without ${row.name}`}
                onClick={() => without(row.id)}
              >
                Try without it
              </button>
            </p>
          </li>
        ))}
      </ul>
    </>
  );
}

type RejectedProps = {
  readonly rows: readonly RejectedRow[];
  readonly withOne: (id: string) => void;
};

/** What each that is not in the week lacks. */
export function RejectedList({ rows, withOne }: RejectedProps) {
  return (
    <ul className="list-plain ledger" aria-label="What is not in the week">
      {rows.map((row) => (
        <li key={row.id}>
          <p className="week-says">
            <strong>{row.name}.</strong> {row.says}{" "}
            {row.room ? (
              <button
                type="button"
                className="link-button"
                aria-label={`Try with ${row.name}`}
                onClick={() => withOne(row.id)}
              >
                Try with it
              </button>
            ) : null}
          </p>
        </li>
      ))}
    </ul>
  );
}
