import { RegisterRowLine } from "./register-row.tsx";
import type { RegisterRow } from "./register-rows.ts";
import type { Marked } from "./use-marks.ts";

type Props = {
  readonly rows: readonly RegisterRow[];
  readonly mark: (marked: Marked) => void;
  readonly more: (place: string) => void;
};

/** Everybody with a place, one row a person; only the rows that changed are drawn again. */
export function RegisterList({ rows, mark, more }: Props) {
  if (rows.length === 0) return <p>Nobody has a place yet.</p>;
  return (
    <ul className="list-plain reg">
      {rows.map((row) => (
        <RegisterRowLine key={row.place.id} row={row} mark={mark} more={more} />
      ))}
    </ul>
  );
}
