import { readTable, type TableFile } from "#adapters/import";
import type { ComingAnswerQuestion } from "#core/outlook";
import {
  chooseColumns,
  type ColumnChoice,
  columnName,
  type DateOrder,
  type DateStyle,
  type NamesRow,
  type NotUsed,
  readVisits,
  type VisitColumn,
  visitsShape,
} from "#core/table";
import { bad, good, type Problem, problem, type Result } from "#core/words";
import type { Given } from "./command.ts";
import { type Limit, readBytes } from "./read-bytes.ts";
import type { World } from "./world.ts";

/** The visits of a file, how it was read, and the rows that were not. */
export type VisitsFile = {
  readonly records: ComingAnswerQuestion;
  readonly read: {
    readonly encoding: string;
    readonly separator: string;
    readonly columns: Readonly<Partial<Record<VisitColumn, string>>>;
    readonly dates: DateStyle;
    readonly rows: number;
    readonly used: number;
    readonly blankRows: number;
    readonly writtenTwoWays: readonly string[];
  };
  readonly notUsed: readonly NotUsed[];
};

/** A hundred thousand visits are some four million bytes. */
const MOST: Limit = {
  bytes: 50_000_000,
  says: "is larger than fifty million bytes.",
  next: "Is it the right file? Cut it in two by date if it is.",
};

/** Problems: those of reading the file, the table, its columns and dates; "rows-unusable", "closed-unreadable". */
export async function readVisitsFile(name: string, given: Given, world: World): Promise<Result<VisitsFile>> {
  const options = readOptions(given);
  if (!options.ok) return options;
  const bytes = await readBytes(name, world, MOST);
  if (!bytes.ok) return bytes;
  const file = readTable(bytes.value, options.value.names);
  if (!file.ok) return file;
  const { table } = file.value;
  const { person, date, amount } = given.values;
  const columns = chooseColumns(table, visitsShape, {
    ...(person === undefined ? {} : { person }),
    ...(date === undefined ? {} : { date }),
    ...(amount === undefined ? {} : { amount }),
  });
  if (!columns.ok) return bad(...columns.problems.map(asOption));
  const found = readVisits(table, columns.value, options.value.order);
  if (!found.ok) return bad(...found.problems.map(asOption));
  const { visits, notUsed, dates, writtenTwoWays } = found.value;
  if (visits.length === 0) return bad(unusable(notUsed));
  const read = { ...howRead(file.value, columns.value), dates, used: visits.length, writtenTwoWays };
  return good({ records: { ...options.value.records, visits }, read, notUsed });
}

/** A problem of the table in the words of the command: at its option, with what to write. */
function asOption(it: Problem): Problem {
  if (!it.code.startsWith("date-order-")) return { ...it, place: `--${it.place}` };
  return {
    ...it,
    next: "Write --date-order day-first or --date-order month-first; rows that do not fit are listed.",
  };
}

function howRead({ table, encoding, separator }: TableFile, columns: ColumnChoice<VisitColumn>) {
  const named = Object.entries(columns).map(([use, column]) => [use, columnName(table, column)] as const);
  return {
    encoding,
    separator,
    columns: Object.fromEntries(named),
    rows: table.rows.length,
    blankRows: table.blankRows.length,
  };
}

type Options = {
  readonly names: NamesRow;
  readonly order: DateOrder | undefined;
  readonly records: Omit<ComingAnswerQuestion, "visits">;
};

function readOptions({ values, flags }: Given): Result<Options> {
  const { names = "look", "date-order": order, until, "new-since": newSince } = values;
  const closed = (values["closed"] ?? "").split(",").filter((it) => it !== "");
  const spans = closed.map((text) => /^\s*(\S+?)\.\.(\S+?)\s*$/.exec(text));
  const problems = [
    ...(order === undefined || isOrder(order) ? [] : [orderUnknown(order)]),
    ...(isNamesRow(names) ? [] : [namesUnknown(names)]),
    ...closed.filter((_, at) => spans[at] === null).map(closedUnreadable),
  ];
  if (problems.length > 0) return bad(...problems);
  return good({
    names: isNamesRow(names) ? names : "look",
    order: order !== undefined && isOrder(order) ? order : undefined,
    records: {
      closed: spans.map((span) => ({ from: span?.[1] ?? "", until: span?.[2] ?? "" })),
      emptyWeeksClosed: flags.has("empty-weeks-closed"),
      ...(until === undefined ? {} : { until }),
      ...(newSince === undefined ? {} : { newSince }),
    },
  });
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

function closedUnreadable(text: string): Problem {
  const says = `“${text.slice(0, 40)}” does not say from when until when.`;
  return problem("closed-unreadable", "--closed", says, "Write it like 2026-08-03..2026-08-30.");
}

function unusable(notUsed: readonly NotUsed[]): Problem {
  const [first] = notUsed;
  const example = first === undefined ? "" : ` Row ${first.row}, “${first.value}”: ${first.says}`;
  const says = `None of the ${notUsed.length} rows could be used.${example}`;
  return problem("rows-unusable", "", says, "Look whether the columns are the right ones, and say them.");
}
