import { readTable } from "#adapters/import";
import {
  type DateStyle,
  type HeadsColumn,
  headsShape,
  type HeadsRow,
  type NotUsed,
  readHeads,
} from "#core/table";
import type { Problem } from "#core/words";
import { chosenColumns, type TableAsk, type TableSeen, tableSeen } from "./table-ask.ts";

/** A row that would not be taken, for whoever looks it up in the file. */
export type RowLeft = Pick<NotUsed, "row" | "column" | "value" | "says">;

export type SessionsFile =
  | { readonly kind: "no table"; readonly problems: readonly Problem[] }
  /** the table is there, but a column or the order of the dates must be said first */
  | { readonly kind: "asks"; readonly seen: TableSeen<HeadsColumn>; readonly problems: readonly Problem[] }
  | {
      readonly kind: "read";
      readonly seen: TableSeen<HeadsColumn>;
      readonly sessions: readonly HeadsRow[];
      readonly left: readonly RowLeft[];
      readonly dates: DateStyle;
    };

/**
 * The sessions in a file or in pasted text, until `today`: one that lies ahead has not happened, and is mostly a
 * date read the wrong way round. `usualPlaces` counts where a row has none.
 */
export function sessionsFile(
  bytes: Uint8Array,
  ask: TableAsk<HeadsColumn>,
  usualPlaces: number | null,
  today: string,
): SessionsFile {
  const file = readTable(bytes, ask.names);
  if (!file.ok) return { kind: "no table", problems: file.problems };
  const { table } = file.value;
  const seen = tableSeen(file.value, headsShape, ask);
  const columns = chosenColumns(table, headsShape, ask);
  if (!columns.ok) return { kind: "asks", seen, problems: columns.problems };
  const read = readHeads(table, columns.value, ask.order ?? undefined, usualPlaces ?? undefined);
  if (!read.ok) return { kind: "asks", seen, problems: read.problems };
  const { sessions, notUsed, dates } = read.value;
  const ahead = sessions.filter(({ date }) => date > today).map((it) => laterThan(today, it));
  return {
    kind: "read",
    seen,
    sessions: sessions.filter(({ date }) => date <= today),
    left: [...notUsed, ...ahead].toSorted((one, other) => one.row - other.row),
    dates,
  };
}

function laterThan(today: string, { row, date }: HeadsRow): RowLeft {
  return { row, column: "", value: date, says: `It is after ${today}, so that it has not happened yet.` };
}
