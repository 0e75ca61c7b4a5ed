import { readAnyDate } from "./read-any-date.ts";
import { readAnyNumber } from "./read-any-number.ts";
import type { Table, TableRow } from "./table.ts";

/** Whether the first row names the columns; "look" decides by what stands there. */
export type NamesRow = "look" | "yes" | "no";

/**
 * The records of a file as a table: which row names the columns, which stand above it, which are blank.
 * A row names the columns where none of its cells is a number or a date and it is as wide as the table.
 */
export function tableOf(records: readonly (readonly string[])[], namesRow: NamesRow = "look"): Table {
  const rows = records.map((cells, index) => ({ row: index + 1, cells: cells.map((cell) => cell.trim()) }));
  const filled = rows.filter(({ cells }) => cells.some((cell) => cell !== ""));
  const blankRows = rows.filter(({ cells }) => cells.every((cell) => cell === "")).map(({ row }) => row);
  const at = namesAt(filled, namesRow);
  const below = filled.slice(at + 1);
  const names = at < 0 ? undefined : filled[at]?.cells;
  const columns = Math.max(names?.length ?? 0, ...widthsOf(below));
  return { names, columns, rows: below, above: filled.slice(0, Math.max(0, at)), blankRows };
}

const ROWS_LOOKED_AT = 10;

function namesAt(filled: readonly TableRow[], namesRow: NamesRow): number {
  if (namesRow === "no" || filled.length === 0) return -1;
  if (namesRow === "yes") return 0;
  const first = filled.slice(0, ROWS_LOOKED_AT);
  const width = usualWidth(filled.slice(0, 200));
  const found = first.findIndex(({ cells }) => isNames(cells, width));
  // a row of values before it: then it is no row of names but a value that cannot be read
  const values = first.findIndex(({ cells }) => cells.some((cell) => readAnyDate(cell) !== undefined));
  return values >= 0 && values < found ? -1 : found;
}

function isNames(cells: readonly string[], width: number): boolean {
  const given = cells.filter((cell) => cell !== "");
  if (given.length < Math.min(2, width) || given.length < width * 0.6) return false;
  return given.every((cell) => readAnyDate(cell) === undefined && readAnyNumber(cell, ".") === undefined);
}

/** How many cells most rows have filled. */
function usualWidth(rows: readonly TableRow[]): number {
  const widths = rows.map(({ cells }) => cells.filter((cell) => cell !== "").length).sort((a, b) => a - b);
  return widths[Math.floor(widths.length / 2)] ?? 0;
}

function widthsOf(rows: readonly TableRow[]): readonly number[] {
  // a spread over ten thousand rows would be too many arguments for one call
  return [rows.reduce((most, { cells }) => Math.max(most, cells.length), 0)];
}
