import { dateOfDay } from "#kernels/calendar";
import { good, type Result } from "#core/words";
import type { ColumnChoice } from "./choose-columns.ts";
import type { VisitColumn } from "./column-use.ts";
import { type DateOrder, type DateStyle, dateStyleOf } from "./date-order.ts";
import { dayOfRow, noValues, notUsed, rowsAboveNames, valuesOf } from "./not-used.ts";
import { personKey } from "./person-key.ts";
import { type DecimalSign, decimalSignOf, readAnyNumber } from "./read-any-number.ts";
import { columnName, type NotUsed, type Table, type TableRow } from "./table.ts";

/** One person on one day; the person as first written. */
export type VisitRow = { readonly row: number; readonly person: string; readonly date: string };

export type VisitsRead = {
  readonly visits: readonly VisitRow[];
  readonly notUsed: readonly NotUsed[];
  readonly dates: DateStyle;
  /** people whose name was written in more than one way and taken for one */
  readonly writtenTwoWays: readonly string[];
};

/**
 * The visits in a table. Every row below the names is either a visit or among those not used, with why.
 * Problems: those of the order of dates, at the column of dates.
 */
export function readVisits(
  table: Table,
  columns: ColumnChoice<VisitColumn>,
  told?: DateOrder,
): Result<VisitsRead> {
  const { date = 0 } = columns;
  const dates = dateStyleOf(valuesOf(table, date), columnName(table, date), told);
  if (!dates.ok) return dates;
  const sign = decimalSignOf(valuesOf(table, columns.amount));
  const found = table.rows.map((row) => ({ row, seen: seenIn(table, row, columns, dates.value, sign) }));
  return good({ ...peopleOf(table, found), dates: dates.value });
}

type Seen = { readonly person: string; readonly day: number };

function seenIn(
  table: Table,
  row: TableRow,
  { person = 0, surname, date = 0, amount }: ColumnChoice<VisitColumn>,
  style: DateStyle,
  sign: DecimalSign,
): Seen | NotUsed {
  const none = noValues(table, row);
  if (none !== undefined) return none;
  const day = dayOfRow(table, row, date, style);
  if (typeof day !== "number") return day;
  const names = [row.cells[person], surname === undefined ? "" : row.cells[surname]];
  const written = names.join(" ").replaceAll(/\s+/g, " ").trim();
  if (written === "") return notUsed(table, row, person, "missing", "Nobody is named.");
  if (amount !== undefined && (readAnyNumber(row.cells[amount] ?? "", sign) ?? 0) < 0) {
    return notUsed(table, row, amount, "refund", "An amount below nought is no visit.");
  }
  return { person: written, day };
}

type Known = { readonly called: string; otherwise: boolean; readonly rowOnDay: Map<number, number> };

/** Visits by one person on one day once, whatever way her name is written. */
function peopleOf(table: Table, found: readonly { readonly row: TableRow; readonly seen: Seen | NotUsed }[]) {
  const people = new Map<string, Known>();
  const visits: VisitRow[] = [];
  const left: NotUsed[] = [...rowsAboveNames(table)];
  for (const { row, seen } of found) {
    if ("why" in seen) {
      left.push(seen);
      continue;
    }
    const known = knownAs(people, seen.person);
    const before = known.rowOnDay.get(seen.day);
    if (before === undefined) {
      known.rowOnDay.set(seen.day, row.row);
      visits.push({ row: row.row, person: known.called, date: dateOfDay(seen.day) });
    } else {
      left.push(notUsed(table, row, -1, "twice", `The same person on the same day as in row ${before}.`));
    }
  }
  const writtenTwoWays = [...people.values()].filter((it) => it.otherwise).map((it) => it.called);
  return { visits, notUsed: left, writtenTwoWays };
}

function knownAs(people: Map<string, Known>, written: string): Known {
  const key = personKey(written);
  const known = people.get(key) ?? { called: written, otherwise: false, rowOnDay: new Map<number, number>() };
  people.set(key, known);
  known.otherwise ||= known.called !== written;
  return known;
}
