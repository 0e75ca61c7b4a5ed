import type { CashLine, EarnedLine } from "#app/views";
import { type Locale } from "#core/words";
import { useId } from "react";
import { TableFrame } from "../parts/table-frame.tsx";
import { dayWords } from "../words/dates.ts";

type Props = {
  readonly caption: string;
  readonly lines: readonly (EarnedLine | CashLine)[];
  readonly locale: Locale;
};

/** The lines behind a month: the day, what it was, whose where the record still has a name, and how much. */
export function LinesTable({ caption, lines, locale }: Props) {
  const id = useId();
  return (
    <TableFrame labelledBy={id}>
      <table className="figures books-table">
        <caption id={id}>{caption}</caption>
        <thead>
          <tr>
            <th scope="col">Day</th>
            <th scope="col" className="books-word">
              What
            </th>
            <th scope="col">Amount</th>
          </tr>
        </thead>
        <tbody>
          {lines.map((line, at) => (
            // oxlint-disable-next-line react/no-array-index-key -- two people may pay the same on one day
            <tr key={at}>
              <th scope="row">{dayWords(line.date, locale)}</th>
              <td className="books-word">
                {line.what}
                <span className="small soft books-whose">
                  {[line.person ?? "", "where" in line ? line.where : ""]
                    .filter((it) => it !== "")
                    .join(", ")}
                </span>
              </td>
              <td>{line.amount}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </TableFrame>
  );
}
