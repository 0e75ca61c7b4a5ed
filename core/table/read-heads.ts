import { dateOfDay } from "#kernels/calendar";
import { good, type Result } from "#core/words";
import type { ColumnChoice, HeadsColumn } from "./choose-columns.ts";
import { type DateOrder, type DateStyle, dateStyleOf } from "./date-order.ts";
import { dayOfRow, noValues, notUsed, rowsAboveNames, valuesOf } from "./not-used.ts";
import { type DecimalSign, decimalSignOf, readAnyNumber } from "./read-any-number.ts";
import { columnName, type NotUsed, type Table, type TableRow } from "./table.ts";

/** One session: how many were on the mats, and what else the table knows of it. */
export type HeadsRow = {
  readonly row: number;
  readonly date: string;
  readonly heads: number;
  readonly capacity?: number;
  readonly turnedAway?: number;
  readonly newcomers?: number;
};

export type HeadsRead = {
  /** by date */
  readonly sessions: readonly HeadsRow[];
  readonly notUsed: readonly NotUsed[];
  readonly dates: DateStyle;
};

/** A hall that holds more is no hall for mats. */
const MOST_HEADS = 1000;

/**
 * The sessions in a table. Every row below the names is either a session or among those not used, with why; an
 * empty cell beside the heads is not known, which is not nought.
 * Problems: those of the order of dates, at the column of dates.
 */
export function readHeads(
  table: Table,
  columns: ColumnChoice<HeadsColumn>,
  told?: DateOrder,
): Result<HeadsRead> {
  const { date = 0 } = columns;
  const dates = dateStyleOf(valuesOf(table, date), columnName(table, date), told);
  if (!dates.ok) return dates;
  const sign = decimalSignOf(valuesOf(table, columns.heads));
  const left: NotUsed[] = [...rowsAboveNames(table)];
  const byDate = new Map<string, HeadsRow>();
  for (const row of table.rows) {
    const session = sessionIn(table, row, columns, dates.value, sign);
    if ("why" in session) {
      left.push(session);
      continue;
    }
    const before = byDate.get(session.date);
    if (before === undefined) byDate.set(session.date, session);
    else left.push(notUsed(table, row, -1, "twice", twiceSays(session, before)));
  }
  const sessions = [...byDate.values()].sort((a, b) => (a.date < b.date ? -1 : 1));
  return good({ sessions, notUsed: left, dates: dates.value });
}

function sessionIn(
  table: Table,
  row: TableRow,
  columns: ColumnChoice<HeadsColumn>,
  style: DateStyle,
  sign: DecimalSign,
): HeadsRow | NotUsed {
  const none = noValues(table, row);
  if (none !== undefined) return none;
  const day = dayOfRow(table, row, columns.date ?? 0, style);
  if (typeof day !== "number") return day;
  const counts: Partial<Record<(typeof COUNTED)[number], number>> = {};
  for (const use of COUNTED) {
    const count = countIn(table, row, columns[use], sign);
    if (typeof count === "object") return count;
    if (count !== undefined) counts[use] = count;
  }
  const { heads, ...others } = counts;
  if (heads === undefined)
    return notUsed(table, row, columns.heads ?? 0, "missing", "It is not said how many came.");
  if (heads > (others.capacity ?? heads)) {
    const says = `More came than the ${others.capacity} that it holds.`;
    return notUsed(table, row, columns.heads ?? 0, "over-capacity", says);
  }
  return { row: row.row, date: dateOfDay(day), heads, ...others };
}

const COUNTED = ["heads", "capacity", "turnedAway", "newcomers"] as const;

function countIn(
  table: Table,
  row: TableRow,
  column: number | undefined,
  sign: DecimalSign,
): number | NotUsed | undefined {
  const text = column === undefined ? "" : (row.cells[column] ?? "");
  if (column === undefined || text === "") return undefined;
  const count = readAnyNumber(text, sign);
  if (count === undefined) return notUsed(table, row, column, "unreadable", "It is not a number.");
  if (Number.isInteger(count) && count >= 0 && count <= MOST_HEADS) return count;
  const says = `People are counted whole, from 0 to ${MOST_HEADS}.`;
  return notUsed(table, row, column, "absurd", says);
}

function twiceSays(session: HeadsRow, before: HeadsRow): string {
  const same = session.heads === before.heads;
  const again = `The date stands in row ${before.row} already`;
  return same ? `${again}.` : `${again}, with ${before.heads}; two sessions on a day belong in two tables.`;
}
