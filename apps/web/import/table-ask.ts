// Example: a file "Date;Heads;Price" with the dates seen, and she says that the heads are column 2 and that the
// places stand nowhere. Invariant: what she said is never replaced by what the file suggests.
import type { TableFile } from "#adapters/import";
import {
  chooseColumns,
  type ColumnChoice,
  columnName,
  type ColumnUse,
  type DateOrder,
  type NamesRow,
  type Shape,
  type Table,
  type TableRow,
} from "#core/table";
import type { Result } from "#core/words";

/** What she says of a table, over what it shows by itself. */
export type TableAsk<Use extends ColumnUse> = {
  /** columns from 0; null: it stands in none */
  readonly columns: Readonly<Partial<Record<Use, number | null>>>;
  /** null: as the dates show */
  readonly order: DateOrder | null;
  readonly names: NamesRow;
};

export const nothingSaid = { columns: {}, order: null, names: "look" } as const;

/** What of a table is shown before it is used. */
export type TableSeen<Use extends ColumnUse> = {
  readonly names: readonly string[];
  /** as they came */
  readonly first: readonly TableRow[];
  readonly rows: number;
  /** said or suggested, as far as there is one */
  readonly columns: ColumnChoice<Use> | null;
  readonly encoding: string;
  readonly separator: string;
};

const ROWS_SHOWN = 5;

export function tableSeen<Use extends ColumnUse>(
  { table, encoding, separator }: TableFile,
  shape: Shape<Use>,
  ask: TableAsk<Use>,
): TableSeen<Use> {
  const lenient = { needed: [], optional: [...shape.needed, ...shape.optional] };
  const columns = chosenColumns(table, lenient, ask);
  return {
    names: Array.from({ length: table.columns }, (_, column) => columnName(table, column)),
    first: [...table.above, ...table.rows].slice(0, ROWS_SHOWN),
    rows: table.rows.length,
    columns: columns.ok ? columns.value : null,
    encoding,
    separator: SEPARATORS[separator],
  };
}

const SEPARATORS: Readonly<Record<TableFile["separator"], string>> = {
  ",": "commas",
  ";": "semicolons",
  "\t": "tabs",
  "|": "upright strokes",
  " ": "spaces",
};

/** The columns to read, hers before those suggested. Problems: those of `chooseColumns`. */
export function chosenColumns<Use extends ColumnUse>(
  table: Table,
  { needed, optional }: Shape<Use>,
  { columns }: TableAsk<Use>,
): Result<ColumnChoice<Use>> {
  const given: Partial<Record<Use, string>> = {};
  for (const use of [...needed, ...optional]) {
    const column = columns[use];
    if (typeof column === "number") given[use] = String(column + 1);
  }
  const wanted = optional.filter((use) => columns[use] !== null);
  return chooseColumns(table, { needed, optional: wanted }, given);
}
