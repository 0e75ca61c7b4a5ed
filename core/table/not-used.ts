import { type DateStyle, dayInStyle } from "./date-order.ts";
import { readAnyDate } from "./read-any-date.ts";
import { columnName, type NotUsed, type Table, type TableRow } from "./table.ts";

const TOTAL = /^(?:grand |sub-?)?(?:totals?|sum|summe|gesamt|average|mean|count)\b[^\p{L}]*$/iu;

/** A row of sums that a spreadsheet puts under its values. */
function totalRow(table: Table, row: TableRow): NotUsed | undefined {
  const found = row.cells.findIndex((cell) => TOTAL.test(cell));
  return found < 0 ? undefined : notUsed(table, row, found, "total", "It is a row of sums.");
}

/**
 * A row with more cells than there are names, as where a comma in “12,50” cuts a cell in two: its values may
 * stand under other names.
 */
function wideRow(table: Table, row: TableRow): NotUsed | undefined {
  const most = table.names?.length ?? row.cells.length;
  if (!row.cells.slice(most).some((cell) => cell !== "")) return undefined;
  return notUsed(table, row, -1, "too-many-cells", "It has more cells than there are columns.");
}

/** Why a row as a whole is no row of values. */
export function noValues(table: Table, row: TableRow): NotUsed | undefined {
  return totalRow(table, row) ?? wideRow(table, row);
}

/** Rows above the names of the columns: a title, mostly, but told, since it may be a row of values. */
export function rowsAboveNames(table: Table): readonly NotUsed[] {
  return table.above.map((row) =>
    notUsed(table, row, -1, "above-the-names", "It stands above the names of the columns."),
  );
}

/** The day of a row, or why it has none. */
export function dayOfRow(table: Table, row: TableRow, column: number, style: DateStyle): number | NotUsed {
  const text = row.cells[column] ?? "";
  const day = dayInStyle(text, style);
  if (day !== undefined) return day;
  if (text === "") return notUsed(table, row, column, "missing", "There is no date.");
  if (readAnyDate(text) === undefined) {
    return notUsed(table, row, column, "unreadable", "It is not a date between 1950 and 2100.");
  }
  const first = style.order === "day-first" ? "day" : "month";
  return notUsed(
    table,
    row,
    column,
    "other-order",
    `It is no date with the ${first} first, as the others are.`,
  );
}

/** `column` of -1 is the whole row. */
export function notUsed(
  table: Table,
  row: TableRow,
  column: number,
  why: NotUsed["why"],
  says: string,
): NotUsed {
  const whole = row.cells.filter((cell) => cell !== "").join(" | ");
  return {
    row: row.row,
    column: column < 0 ? "" : columnName(table, column),
    value: (column < 0 ? whole : (row.cells[column] ?? "")).slice(0, 80),
    why,
    says,
  };
}

export function valuesOf(table: Table, column: number | undefined): readonly string[] {
  return column === undefined ? [] : table.rows.map(({ cells }) => cells[column] ?? "");
}
