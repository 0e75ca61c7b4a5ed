import { createHash } from "node:crypto";
import { bad, good, problem, type Result } from "#core/words";
import { z } from "zod";
import { newestVersion } from "../migrations.ts";
import type { Tables } from "../tables.ts";
import { FORMAT } from "./everything-format.ts";
import { type MovedTable, movedTables } from "./moved-tables.ts";

export type Lines = () => AsyncIterable<string>;

const first = z.object({ format: z.literal(FORMAT), version: z.int() });
const last = z.object({ end: z.object({ lines: z.int(), sha256: z.string() }) });

/**
 * Whether a file of everything is whole, unchanged and of this version or an older one; answers its practices.
 * Problems: "move-file-unreadable", "move-file-newer".
 */
export async function checkEverything(lines: Lines): Promise<Result<readonly string[]>> {
  const digest = createHash("sha256");
  let number = 0;
  let before: string | undefined;
  for await (const line of lines()) {
    if (before !== undefined) digest.update(`${before}\n`);
    number += 1;
    const begun = number === 1 ? checkFirst(line) : undefined;
    if (begun !== undefined) return bad(begun);
    before = line;
  }
  const end = last.safeParse(parsed(before ?? ""));
  if (!end.success) return bad(unreadable(number, "it was cut off: its last line is not there"));
  const whole = end.data.end.lines === number - 1 && end.data.end.sha256 === digest.digest("hex");
  return whole ? practicesOf(lines) : bad(unreadable(number, "it was changed after it was written"));
}

function checkFirst(line: string) {
  const read = first.safeParse(parsed(line));
  if (!read.success) return unreadable(1, "it was not written by hallful move-out");
  return read.data.version > newestVersion() ? newer(read.data.version) : undefined;
}

async function practicesOf(lines: Lines): Promise<Result<readonly string[]>> {
  const practices: string[] = [];
  let number = 0;
  for await (const line of lines()) {
    number += 1;
    if (number === 1) continue;
    const row = readRow(line, number);
    if (!row.ok) return row;
    if (row.value?.table.name === "practice") practices.push(row.value.practice);
  }
  return good(practices);
}

export type ReadRow = {
  readonly table: MovedTable;
  readonly practice: string;
  readonly row: Tables[keyof Tables];
};

/** One line as the row that is kept, undefined for the first and the last. Problem: "move-file-unreadable". */
export function readRow(line: string, number: number): Result<ReadRow | undefined> {
  const said = parsed(line);
  if (first.safeParse(said).success || last.safeParse(said).success) return good(undefined);
  const [entry, more] = Object.entries(typeof said === "object" && said !== null ? said : {});
  const table = movedTables.find((it) => it.name === entry?.[0]);
  if (table === undefined || entry === undefined || more !== undefined) {
    return bad(unreadable(number, "it is no row of a table that is known here"));
  }
  const read = table.row.safeParse(entry[1]);
  if (!read.success) return bad(unreadable(number, `it is no sound ${table.name}`));
  const kept = Object.entries(read.data).map(([column, value]) => [
    column,
    table.json.includes(column) ? JSON.stringify(asGiven(entry[1], column)) : value,
  ]);
  // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- the schema of the table has read it
  const row = Object.fromEntries(kept) as Tables[keyof Tables];
  return good({ table, practice: row.practice, row });
}

/** A document is kept as it came, and what a later version added is filled in when it is read. */
function asGiven(row: unknown, column: string): unknown {
  return typeof row === "object" && row !== null ? Reflect.get(row, column) : undefined;
}

function parsed(line: string): unknown {
  try {
    return JSON.parse(line);
  } catch {
    return undefined;
  }
}

export function unreadable(line: number, how: string) {
  const says = `The file cannot be taken in: ${how}.`;
  const next = "Nothing was changed. Write it anew with hallful move-out, or take another copy of it.";
  return problem("move-file-unreadable", `line ${line}`, says, next);
}

function newer(version: number) {
  const says = `The file was written by a newer Hallful (version ${version}).`;
  const next = `Nothing was changed. Use the newer Hallful; this one knows up to version ${newestVersion()}.`;
  return problem("move-file-newer", "line 1", says, next);
}
