import "./import.css";
import type { Locale } from "#core/words";
import { useId } from "react";
import { TableFrame } from "../parts/table-frame.tsx";
import { dayWords } from "../words/dates.ts";
import type { Session } from "./taking.ts";

type Props = { readonly sessions: readonly Session[]; readonly locale: Locale };

const COLUMNS = [
  ["capacity", "Places"],
  ["turnedAway", "Turned away"],
  ["waiting", "Waited"],
  ["newcomers", "New"],
] as const;

/** The sessions that would be new in the record. */
export function SessionsTable({ sessions, locale }: Props) {
  const title = useId();
  const columns = COLUMNS.filter(([key]) => sessions.some((it) => it[key] !== undefined));
  return (
    <TableFrame labelledBy={title}>
      <table className="figures">
        <caption id={title}>New in the record</caption>
        <thead>
          <tr>
            <th scope="col">Date</th>
            <th scope="col">Came</th>
            {columns.map(([key, label]) => (
              <th key={key} scope="col">
                {label}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {sessions.map((it) => (
            <tr key={it.date}>
              <th scope="row">{dayWords(it.date, locale)}</th>
              <td>{it.cancelled === true ? "cancelled" : it.heads}</td>
              {columns.map(([key]) => (
                <td key={key}>{it[key] ?? ""}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </TableFrame>
  );
}
