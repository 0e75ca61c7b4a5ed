import { formatLength, type LengthUnits } from "#core/words";
import type { DrawnMeasure } from "./closed-tape.ts";

type Props = { readonly drawn: readonly DrawnMeasure[]; readonly units: LengthUnits };

/** What was taped beside what is drawn: the adjustment is never hidden. */
export function DrawnTable({ drawn, units }: Props) {
  return (
    <table className="figures tape-table">
      <caption>As taped, and as drawn</caption>
      <thead>
        <tr>
          <th scope="col">Measure</th>
          <th scope="col">taped</th>
          <th scope="col">drawn</th>
          <th scope="col">moved by</th>
        </tr>
      </thead>
      <tbody>
        {drawn.map((it) => (
          <tr key={it.name} data-marked={it.isSuspect || undefined}>
            <th scope="row">
              {it.name.replace(/^the /, "")}
              {it.isSuspect ? <span className="figures-mark"> likely wrong</span> : null}
            </th>
            <td>{it.taped === null ? "not known" : shown(it, it.taped, units)}</td>
            <td>{shown(it, it.drawn, units)}</td>
            <td>{it.taped === null ? "" : movedBy(it, it.drawn - it.taped, units)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function shown({ kind }: DrawnMeasure, value: number, units: LengthUnits): string {
  return kind === "turn" ? `${value.toFixed(1)}°` : formatLength(value, units);
}

function movedBy(it: DrawnMeasure, by: number, units: LengthUnits): string {
  const size = shown(it, Math.abs(by), units);
  const nothing = size === shown(it, 0, units);
  return nothing ? size : `${by > 0 ? "+" : "−"}${size}`;
}
