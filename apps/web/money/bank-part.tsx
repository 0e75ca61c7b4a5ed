import type { MoneyJson } from "#core/cash";
import { useId } from "react";
import { Show } from "../parts/show.tsx";
import { TableFrame } from "../parts/table-frame.tsx";
import { Working } from "../parts/working.tsx";
import { BankPlot } from "./bank-plot.tsx";
import type { MoneyWords } from "./money-words-of.ts";

type Props = { readonly json: MoneyJson; readonly words: MoneyWords };

/** The bank as a picture, as a table, and the sum behind it. */
export function BankPart({ json, words }: Props) {
  const { working } = json;
  const lines = (part: string) =>
    working
      .filter((line) => line.part === part)
      .map((line) => ({ ...line, label: words.says(line.label), sum: words.says(line.sum) }));
  return (
    <>
      <BankPlot json={json} words={words} />
      <MonthsTable json={json} words={words} />
      <Show summary="Show the working">
        <Working caption="The bank over these months" lines={lines("bank")} />
        <Working caption="What to have there" lines={lines("reserve")} />
      </Show>
    </>
  );
}

function MonthsTable({ json, words }: Props) {
  const id = useId();
  const { months, tax, uncertain } = json;
  const passes = months.some(({ owed }) => Number(owed) !== 0);
  return (
    <TableFrame labelledBy={id}>
      <table className="figures money-table">
        <caption id={id}>
          The bank by month{uncertain ? ", every uncertain figure at its middle" : ""}
        </caption>
        <thead>
          <tr>
            <th scope="col">Month</th>
            <th scope="col">In</th>
            <th scope="col">Out</th>
            {tax === null ? null : <th scope="col">Tax</th>}
            <th scope="col">Lowest</th>
            <th scope="col">At the end</th>
            {uncertain ? <th scope="col">Low case</th> : null}
            {uncertain ? <th scope="col">High case</th> : null}
            {passes ? <th scope="col">Owed in classes</th> : null}
            {tax === null ? null : <th scope="col">Tax pot</th>}
          </tr>
        </thead>
        <tbody>
          {months.map((row) => (
            <tr key={row.month} data-marked={row.lowestOn === json.lowest.on.middle || undefined}>
              <th scope="row">{words.month(row.month)}</th>
              <td>{words.amount(row.in)}</td>
              <td>{words.amount(row.out)}</td>
              {tax === null ? null : <td>{Number(row.tax) === 0 ? "" : words.amount(row.tax)}</td>}
              <td>{words.amount(row.lowest.middle)}</td>
              <td>{words.amount(row.end.middle)}</td>
              {uncertain ? <td>{words.amount(row.end.low)}</td> : null}
              {uncertain ? <td>{words.amount(row.end.high)}</td> : null}
              {passes ? <td>{words.amount(row.owed)}</td> : null}
              {row.pot === null ? null : <td>{words.amount(row.pot)}</td>}
            </tr>
          ))}
        </tbody>
      </table>
    </TableFrame>
  );
}
