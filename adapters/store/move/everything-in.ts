import { bad, good, problem, type Result } from "#core/words";
import type { Transaction } from "kysely";
import { allOrNothing } from "../all-or-nothing.ts";
import type { Ground } from "../ground.ts";
import type { Tables } from "../tables.ts";
import { checkEverything, type Lines, type ReadRow, readRow, unreadable } from "./check-everything.ts";

type Target = Transaction<Tables>;

/** Rows of one table that are inserted by one statement: SQLite binds at most 32,766 values. */
const ROWS = 500;

/**
 * Takes everything of a file in, all of it or nothing; answers the number of rows. Practices that are there already
 * stop it, since nothing may be overwritten.
 * Problems: "move-file-unreadable", "move-file-newer", "move-practice-there".
 */
export async function everythingIn(ground: Ground, lines: Lines): Promise<Result<number>> {
  const practices = await checkEverything(lines);
  if (!practices.ok) return practices;
  return allOrNothing(ground, async (transaction) => {
    const there = await firstThere(transaction, practices.value);
    return there === undefined ? takeIn(transaction, lines, new Set(practices.value)) : bad(isThere(there));
  });
}

async function firstThere(transaction: Target, practices: readonly string[]): Promise<string | undefined> {
  const rows = await transaction.selectFrom("practice").select("practice").execute();
  const there = new Set(rows.map((row) => row.practice));
  return practices.find((it) => there.has(it));
}

async function takeIn(
  transaction: Target,
  lines: Lines,
  practices: ReadonlySet<string>,
): Promise<Result<number>> {
  let waiting: ReadRow[] = [];
  let number = 0;
  let rows = 0;
  const settle = async (): Promise<boolean> => {
    const done = await insert(transaction, waiting);
    rows += waiting.length;
    waiting = [];
    return done;
  };
  for await (const line of lines()) {
    number += 1;
    const read = readRow(line, number);
    if (!read.ok) return read;
    if (read.value === undefined) continue;
    if (!practices.has(read.value.practice))
      return bad(unreadable(number, "its practice is not in the file"));
    const full = waiting.length === ROWS || waiting[0]?.table.name !== read.value.table.name;
    if (full && !(await settle())) return bad(unreadable(number, "it holds something twice"));
    waiting.push(read.value);
  }
  return (await settle()) ? good(rows) : bad(unreadable(number, "it holds something twice"));
}

async function insert(transaction: Target, rows: readonly ReadRow[]): Promise<boolean> {
  const [first] = rows;
  if (first === undefined) return true;
  const done = await transaction
    .insertInto(first.table.name)
    .values(rows.map((it) => it.row))
    .onConflict((conflict) => conflict.doNothing())
    .executeTakeFirst();
  return done.numInsertedOrUpdatedRows === BigInt(rows.length);
}

function isThere(practice: string) {
  const says = `The practice ${practice} is in the file and here already.`;
  const next =
    "Nothing was changed. Take the file in where nothing is kept yet: another data file or database.";
  return problem("move-practice-there", `practice/${practice}`, says, next);
}
