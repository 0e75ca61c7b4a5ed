import type { MoneyJson, PathJson } from "#core/cash";
import { useId } from "react";
import { Show } from "../parts/show.tsx";
import { TableFrame } from "../parts/table-frame.tsx";
import { Working } from "../parts/working.tsx";
import type { MoneyWords } from "./money-words-of.ts";
import { PathPlot } from "./path-plot.tsx";

type Props = { readonly json: MoneyJson; readonly path: PathJson; readonly words: MoneyWords };

/** From when on which class can go: the dated sentences, the picture, the table and the sum of one month. */
export function PathPart({ json, path, words }: Props) {
  const [first = "", ...others] = json.says.path;
  const lines = json.working
    .filter(({ part }) => part === "path")
    .map((line) => ({ ...line, label: words.says(line.label) }));
  return (
    <>
      <div className="stack-close">
        <output className="answer">{words.says(first)}</output>
        {others.map((it) => (
          <p key={it}>{words.says(it)}</p>
        ))}
        <p className="caution">
          A class that goes seldom comes back: read the contract, and keep the reserve before you give notice.
        </p>
      </div>
      <PathPlot path={path} words={words} />
      <PathTable path={path} words={words} />
      <Show summary="Show the working">
        <Working caption="The first month in which something goes, or the last" lines={lines} />
      </Show>
    </>
  );
}

function PathTable({ path, words }: Omit<Props, "json">) {
  const id = useId();
  const nameOf = (id: string) => path.classes.find((it) => it.id === id)?.name ?? id;
  return (
    <TableFrame labelledBy={id}>
      <table className="figures money-table">
        <caption id={id}>
          Income a month before tax, and the chance that it reaches {words.amount(path.need)}
        </caption>
        <thead>
          <tr>
            <th scope="col">From</th>
            <th scope="col" className="money-word">
              Still taught
            </th>
            <th scope="col">Low</th>
            <th scope="col">Middle</th>
            <th scope="col">High</th>
            <th scope="col">Chance</th>
            <th scope="col">With all</th>
            <th scope="col">With none</th>
          </tr>
        </thead>
        <tbody>
          {path.months.map((row) => (
            <tr key={row.month}>
              <th scope="row">{words.month(row.month)}</th>
              <td className="money-word">
                {row.kept.length === 0 ? "only the rest" : row.kept.map(nameOf).join(", ")}
              </td>
              <td>{words.amount(row.low)}</td>
              <td>{words.amount(row.middle)}</td>
              <td>{words.amount(row.high)}</td>
              <td>{percent(row.chance)}</td>
              <td>{percent(row.chanceWithAll)}</td>
              <td>{percent(row.chanceWithNone)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </TableFrame>
  );
}

function percent(chance: number): string {
  return `${Math.floor(chance * 100 + 1e-6)} %`;
}
