import type { Insertable, Transaction } from "kysely";
import type { Tables } from "../tables.ts";

/** SQLite binds at most 32,766 values a statement (https://www.sqlite.org/limits.html); no table has over 10 columns. */
const ROWS = 1000;

/** Inserts rows, a thousand a statement. */
export async function insertInParts<Table extends keyof Tables>(
  transaction: Transaction<Tables>,
  table: Table,
  rows: readonly Insertable<Tables[Table]>[],
): Promise<void> {
  for (let start = 0; start < rows.length; start += ROWS) {
    const part = rows.slice(start, start + ROWS);
    // oxlint-disable-next-line no-await-in-loop -- one connection: the statements of a transaction take turns
    await transaction.insertInto(table).values(part).execute();
  }
}
