import { readAnyDate } from "./read-any-date.ts";
import { readAnyNumber } from "./read-any-number.ts";
import type { Table } from "./table.ts";

/** What the values of a column look like. Shares are of the cells that are not empty. */
export type ColumnFacts = {
  readonly column: number;
  /** in small letters; "" where the column has no name */
  readonly name: string;
  readonly filled: number;
  readonly dates: number;
  readonly wholes: number;
  readonly numbers: number;
  /** distinct values for each filled cell: 1 where none stands twice */
  readonly distinct: number;
  /** distinct pairs of the value and the day for each filled cell: a person stands once on a day, a count often */
  readonly onceADay: number;
};

// enough to see what a column is; a file of a hundred thousand rows is not read twice for it
const ROWS_LOOKED_AT = 1000;

/** `date` is the column of dates, where it is known. */
export function columnFacts(table: Table, date?: number): readonly ColumnFacts[] {
  const rows = table.rows.slice(0, ROWS_LOOKED_AT);
  return Array.from({ length: table.columns }, (_, column) => {
    const filled = rows.filter(({ cells }) => (cells[column] ?? "") !== "");
    const values = filled.map(({ cells }) => (cells[column] ?? "").toLowerCase());
    const onDays = filled.map(({ cells }, at) => `${date === undefined ? at : cells[date]} ${values[at]}`);
    const numbers = values.map((value) => readAnyNumber(value, ".") ?? readAnyNumber(value, ","));
    const share = (count: number): number => count / Math.max(1, values.length);
    return {
      column,
      name: (table.names?.[column] ?? "").toLowerCase(),
      filled: values.length / Math.max(1, rows.length),
      dates: share(values.filter((value) => readAnyDate(value) !== undefined).length),
      wholes: share(
        numbers.filter((value) => value !== undefined && Number.isInteger(value) && value >= 0).length,
      ),
      numbers: share(numbers.filter((value) => value !== undefined).length),
      distinct: share(new Set(values).size),
      onceADay: share(new Set(onDays).size),
    };
  });
}
