import type { Stays } from "#core/outlook";
import { chanceText } from "#core/price";
import { useId, useMemo } from "react";
import { Show } from "../parts/show.tsx";
import { TableFrame } from "../parts/table-frame.tsx";
import { StaysPlot } from "./stays-plot.tsx";

type Props = { readonly stays: Stays; readonly says: string };

/** How long newcomers stay: in words, drawn, and as a table. */
export function NewcomersSection({ stays, says }: Props) {
  const { curve } = stays;
  const plot = useMemo(() => (curve.length === 0 ? null : <StaysPlot curve={curve} />), [curve]);
  return (
    <section className="part" aria-labelledby="newcomers">
      <h2 id="newcomers">How long newcomers stay</h2>
      <p>{says}</p>
      {plot}
      {curve.length === 0 ? null : (
        <Show summary="Show each week">
          <StaysTable curve={curve} />
        </Show>
      )}
    </section>
  );
}

function StaysTable({ curve }: Pick<Stays, "curve">) {
  const title = useId();
  return (
    <TableFrame labelledBy={title}>
      <table className="figures">
        <caption id={title}>Of those who began, still coming</caption>
        <thead>
          <tr>
            <th scope="col">After week</th>
            <th scope="col">Stopped</th>
            <th scope="col">Still coming</th>
            <th scope="col">Four times of five</th>
          </tr>
        </thead>
        <tbody>
          {curve.map((it) => (
            <tr key={it.period}>
              <th scope="row">{it.period}</th>
              <td>
                {it.stopped} of {it.atRisk}
              </td>
              <td>{chanceText(it.value)}</td>
              <td>
                {chanceText(it.low)} to {chanceText(it.high)}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </TableFrame>
  );
}
