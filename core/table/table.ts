/** A row as it came, with its number as a spreadsheet counts: the first row is 1, blank ones are counted. */
export type TableRow = { readonly row: number; readonly cells: readonly string[] };

/** What somebody's file or pasted text holds, before anybody says what it means. */
export type Table = {
  /** what the columns are called; "" where a column has no name, undefined where the table has no such row */
  readonly names: readonly string[] | undefined;
  readonly columns: number;
  readonly rows: readonly TableRow[];
  /** rows above the names, like a title */
  readonly above: readonly TableRow[];
  readonly blankRows: readonly number[];
};

/** A row, or one value in it, that is not counted. Every row is either used or stands in such a list. */
export type NotUsed = {
  readonly row: number;
  /** the column's name or number, "" for the whole row */
  readonly column: string;
  readonly value: string;
  readonly why:
    | "missing"
    | "unreadable"
    | "absurd"
    | "other-order"
    | "total"
    | "above-the-names"
    | "too-many-cells"
    | "twice"
    | "refund"
    | "over-capacity";
  /** one plain sentence */
  readonly says: string;
};

/** "Name", or "column 3" where it has none. Columns are counted from 0. */
export function columnName(table: Table, column: number): string {
  const name = table.names?.[column] ?? "";
  return name === "" ? `column ${column + 1}` : name;
}

/** Every column with its number, for a sentence: "1 Name, 2 Date". */
export function columnList(table: Table): string {
  const names = Array.from({ length: table.columns }, (_, column) => table.names?.[column] ?? "");
  return names.map((name, column) => `${column + 1}${name === "" ? "" : ` ${name}`}`).join(", ");
}
