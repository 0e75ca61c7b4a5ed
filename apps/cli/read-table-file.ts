import { readTable } from "#adapters/import";
import {
  chooseColumns,
  type ColumnChoice,
  type ColumnUse,
  columnName,
  type DateOrder,
  type NamesRow,
  type NotUsed,
  type Shape,
  type Table,
} from "#core/table";
import { bad, good, type Problem, problem, type Result } from "#core/words";
import type { Given, Option } from "./command.ts";
import { type Limit, readBytes } from "./read-bytes.ts";
import type { World } from "./world.ts";

/** The options of every command that reads a table of dates. */
export const tableOptions: Readonly<Record<string, Option>> = {
  date: { value: "COLUMN", says: "the column that says when" },
  "date-order": { value: "ORDER", says: "day-first or month-first, where the column does not show it" },
  names: { value: "yes|no", says: "whether the first row names the columns; looked at without it" },
};

/** A table with the columns to read, and how it was read. */
export type ChosenTable<Use extends ColumnUse> = {
  readonly table: Table;
  readonly columns: ColumnChoice<Use>;
  readonly order: DateOrder | undefined;
  readonly read: HowRead;
};

export type HowRead = {
  readonly encoding: string;
  readonly separator: string;
  readonly columns: Readonly<Record<string, string>>;
  readonly rows: number;
  readonly blankRows: number;
};

/** A hundred thousand visits are some four million bytes. */
const MOST: Limit = {
  bytes: 50_000_000,
  says: "is larger than fifty million bytes.",
  next: "Is it the right file? Cut it in two by date if it is.",
};

/**
 * The table in a file; each use of a column is the option of its name.
 * Problems: those of reading bytes, the table and its columns; "date-order-unknown", "names-unknown".
 */
export async function readTableFile<Use extends ColumnUse>(
  name: string,
  given: Given,
  world: World,
  shape: Shape<Use>,
): Promise<Result<ChosenTable<Use>>> {
  const { names = "look", "date-order": order } = given.values;
  if (order !== undefined && !isOrder(order)) return bad(orderUnknown(order));
  if (!isNamesRow(names)) return bad(namesUnknown(names));
  const bytes = await readBytes(name, world, MOST);
  if (!bytes.ok) return bytes;
  const file = readTable(bytes.value, names);
  if (!file.ok) return file;
  const { table, encoding, separator } = file.value;
  const columns = chooseColumns(table, shape, columnsGiven(given, shape));
  if (!columns.ok) return bad(...columns.problems.map(asOption));
  const read = {
    encoding,
    separator,
    columns: namedColumns(table, columns.value),
    rows: table.rows.length,
    blankRows: table.blankRows.length,
  };
  return good({ table, columns: columns.value, order, read });
}

function columnsGiven<Use extends ColumnUse>(
  { values }: Given,
  { needed, optional }: Shape<Use>,
): Readonly<Partial<Record<Use, string>>> {
  const given = [...needed, ...optional].flatMap((use) => {
    const called = values[optionOf(use)];
    return called === undefined ? [] : [[use, called] as const];
  });
  // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- the keys are uses of the shape
  return Object.fromEntries(given) as Readonly<Partial<Record<Use, string>>>;
}

/** turnedAway is --turned-away */
function optionOf(use: string): string {
  return use.replace(/[A-Z]/, (letter) => `-${letter.toLowerCase()}`);
}

function namedColumns(table: Table, columns: ColumnChoice<ColumnUse>): Readonly<Record<string, string>> {
  const named = Object.entries(columns).map(([use, column]) => [use, columnName(table, column)] as const);
  return Object.fromEntries(named);
}

/** A problem of the table in the words of the command: at its option, with what to write. */
export function asOption(it: Problem): Problem {
  if (!it.code.startsWith("date-order-"))
    return it.place === "" ? it : { ...it, place: `--${optionOf(it.place)}` };
  const next = "Write --date-order day-first or --date-order month-first; rows that do not fit are listed.";
  return { ...it, next };
}

export function rowsUnusable(notUsed: readonly NotUsed[]): Problem {
  const [first] = notUsed;
  const example = first === undefined ? "" : ` Row ${first.row}, “${first.value}”: ${first.says}`;
  const says = `None of the ${notUsed.length} rows could be used.${example}`;
  return problem("rows-unusable", "", says, "Look whether the columns are the right ones, and say them.");
}

function isOrder(text: string): text is DateOrder {
  return text === "day-first" || text === "month-first";
}

function isNamesRow(text: string): text is NamesRow {
  return text === "look" || text === "yes" || text === "no";
}

function orderUnknown(text: string): Problem {
  const says = `“${text.slice(0, 40)}” is no order of day and month.`;
  return problem("date-order-unknown", "--date-order", says, "There are: day-first, month-first.");
}

function namesUnknown(text: string): Problem {
  const says = `“${text.slice(0, 40)}” does not say whether the first row names the columns.`;
  return problem("names-unknown", "--names", says, "There are: yes, no.");
}
