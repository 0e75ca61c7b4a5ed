import type { MoneyJson, TaxJson } from "#core/cash";
import { useId } from "react";
import { Show } from "../parts/show.tsx";
import { TableFrame } from "../parts/table-frame.tsx";
import { Working } from "../parts/working.tsx";
import type { MoneyWords } from "./money-words-of.ts";

type Props = { readonly json: MoneyJson; readonly tax: TaxJson; readonly words: MoneyWords };

/** What to put aside of each receipt, the days on which tax falls due, and the sum of each tax year. */
export function TaxPart({ json, tax, words }: Props) {
  const [first = "", ...others] = json.says.tax;
  return (
    <>
      <div className="stack-close">
        <output className="answer">{words.says(first)}</output>
        {others.map((it) => (
          <p key={it}>{words.says(it)}</p>
        ))}
        <p className="caution">
          An estimate. The tax authority or an accountant decides; what may be set against tax is theirs to
          say.
        </p>
      </div>
      {tax.dates.length === 0 ? null : <DatesTable tax={tax} words={words} />}
      <Show summary="Show the working">
        {tax.years.map((year) => (
          <Working
            key={year.from}
            caption={words.says(`Tax year from ${year.from} until ${year.until}, ${year.tableName}`)}
            lines={json.working.filter(({ part }) => part === `tax ${year.from}`)}
          />
        ))}
      </Show>
      <Show summary="Where the rates come from">
        {tax.years.map(({ from, tableName, sources, ownTable }) => (
          <div key={from}>
            <p>
              <strong>{words.says(`Tax year from ${from}`)}</strong>: {tableName}
              {ownTable ? "" : ", in place of rates that are not here yet"}
            </p>
            <ul>
              {sources.map(({ title, mark, note }) => (
                <li key={title}>
                  {title} ({mark}){note === "" ? "" : `: ${note}`}
                </li>
              ))}
            </ul>
          </div>
        ))}
      </Show>
    </>
  );
}

const whats: Readonly<Record<TaxJson["dates"][number]["what"], string>> = {
  balance: "What is left of the bill",
  "on account": "On account, half of the bill before",
  instalment: "Estimate",
  register: "Register for self assessment",
};

function DatesTable({ tax, words }: Omit<Props, "json">) {
  const id = useId();
  return (
    <TableFrame labelledBy={id}>
      <table className="figures money-table">
        <caption id={id}>Days for tax, an estimate</caption>
        <thead>
          <tr>
            <th scope="col">By</th>
            <th scope="col" className="money-word">
              What
            </th>
            <th scope="col" className="money-word">
              For the tax year from
            </th>
            <th scope="col">Amount</th>
          </tr>
        </thead>
        <tbody>
          {tax.dates.map(({ date, what, forYear, amount, inMonths }) => (
            <tr key={`${date} ${what} ${forYear}`}>
              <th scope="row">{words.says(date)}</th>
              <td className="money-word">
                {whats[what]}
                {inMonths ? "" : ", after these months"}
              </td>
              <td className="money-word">{words.says(forYear)}</td>
              <td>{amount === null ? "" : words.amount(amount)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </TableFrame>
  );
}
