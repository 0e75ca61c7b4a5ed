import { dateOfDay } from "#kernels/calendar";
import { good, type Result } from "#core/words";
import type { ColumnChoice } from "./choose-columns.ts";
import type { HeadsColumn } from "./column-use.ts";
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
  readonly waiting?: number;
  readonly newcomers?: number;
  /** true where the row says so instead of how many came */
  readonly cancelled?: boolean;
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
 * empty cell beside the heads is not known, which is not nought. `usualCapacity` counts where a row has none.
 * Problems: those of the order of dates, at the column of dates.
 */
export function readHeads(
  table: Table,
  columns: ColumnChoice<HeadsColumn>,
  told?: DateOrder,
  usualCapacity?: number,
): Result<HeadsRead> {
  const { date = 0 } = columns;
  const dates = dateStyleOf(valuesOf(table, date), columnName(table, date), told);
  if (!dates.ok) return dates;
  const sign = decimalSignOf(valuesOf(table, columns.heads));
  const left: NotUsed[] = [...rowsAboveNames(table)];
  const byDate = new Map<string, HeadsRow>();
  for (const row of table.rows) {
    const session = sessionIn(table, row, columns, dates.value, sign, usualCapacity);
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
  usualCapacity: number | undefined,
): HeadsRow | NotUsed {
  const none = noValues(table, row);
  if (none !== undefined) return none;
  const day = dayOfRow(table, row, columns.date ?? 0, style);
  if (typeof day !== "number") return day;
  const dated = { row: row.row, date: dateOfDay(day) };
  if (CANCELLED.test(row.cells[columns.heads ?? 0] ?? "")) return { ...dated, heads: 0, cancelled: true };
  const counts: Partial<Record<(typeof COUNTED)[number], number>> = {};
  for (const use of COUNTED) {
    const count = countIn(table, row, columns[use], sign, use === "capacity" ? 1 : 0);
    if (typeof count === "object") return count;
    if (count !== undefined) counts[use] = count;
  }
  const { heads, ...others } = counts;
  if (heads === undefined)
    return notUsed(table, row, columns.heads ?? 0, "missing", "It is not said how many came.");
  const most = others.capacity ?? usualCapacity ?? heads;
  if (heads > most) {
    const says = `More came than the ${most} that it holds.`;
    return notUsed(table, row, columns.heads ?? 0, "over-capacity", says);
  }
  if ((others.newcomers ?? 0) > heads) {
    return notUsed(table, row, columns.newcomers ?? 0, "absurd", `Only ${heads} came in all.`);
  }
  return { ...dated, heads, ...others };
}

/** What people write where a number would stand. */
const CANCELLED = /^(?:cancel|no class|not held|called off)/i;

const COUNTED = ["heads", "capacity", "turnedAway", "waiting", "newcomers"] as const;

function countIn(
  table: Table,
  row: TableRow,
  column: number | undefined,
  sign: DecimalSign,
  least: number,
): number | NotUsed | undefined {
  const text = column === undefined ? "" : (row.cells[column] ?? "");
  if (column === undefined || text === "") return undefined;
  const count = readAnyNumber(text, sign);
  if (count === undefined) return notUsed(table, row, column, "unreadable", "It is not a number.");
  if (Number.isInteger(count) && count >= least && count <= MOST_HEADS) return count;
  const says = `People are counted whole, from ${least} to ${MOST_HEADS}.`;
  return notUsed(table, row, column, "absurd", says);
}

function twiceSays(session: HeadsRow, before: HeadsRow): string {
  const same = session.heads === before.heads;
  const again = `The date stands in row ${before.row} already`;
  return same ? `${again}.` : `${again}, with ${before.heads}; two sessions on a day belong in two tables.`;
}
