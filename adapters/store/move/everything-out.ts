import { createHash } from "node:crypto";
import { good, type Result } from "#core/words";
import { sql, type Transaction } from "kysely";
import type { Ground } from "../ground.ts";
import { newestVersion } from "../migrations.ts";
import type { Tables } from "../tables.ts";
import { FORMAT } from "./everything-format.ts";
import { type MovedTable, movedTables } from "./moved-tables.ts";

/** Rows read at a time, so that a long record does not have to fit into memory at once. */
const PAGE = 1000;

type Write = (lines: string) => Promise<void>;
type Row = Readonly<Record<string, unknown>>;

/**
 * Writes everything of all practices as it was at one moment: a line with the format, a line for each row in the
 * order of its table and key, and a last line with the number of lines before it and their digest. The same data is
 * the same text, whichever database it comes from. Answers the number of rows.
 */
export async function everythingOut(ground: Ground, write: Write): Promise<Result<number>> {
  const digest = createHash("sha256");
  let lines = 0;
  const say = async (said: readonly unknown[]) => {
    const text = said.map((it) => `${JSON.stringify(it)}\n`).join("");
    digest.update(text);
    lines += said.length;
    await write(text);
  };
  return ground.atOneMoment(async (transaction) => {
    await say([{ format: FORMAT, version: newestVersion() }]);
    for (const table of movedTables) await tableOut(transaction, table, say);
    await write(`${JSON.stringify({ end: { lines, sha256: digest.digest("hex") } })}\n`);
    return good(lines - 1);
  });
}

async function tableOut(
  transaction: Transaction<Tables>,
  table: MovedTable,
  say: (said: readonly unknown[]) => Promise<void>,
): Promise<void> {
  let after: Row | undefined;
  for (;;) {
    // oxlint-disable no-await-in-loop -- each page begins where the one before ended
    const rows = await page(transaction, table, after);
    await say(rows.map((row) => ({ [table.name]: written(table, row) })));
    // oxlint-enable no-await-in-loop
    if (rows.length < PAGE) return;
    after = rows.at(-1);
  }
}

async function page(
  transaction: Transaction<Tables>,
  { name, key }: MovedTable,
  after: Row | undefined,
): Promise<readonly Row[]> {
  const order = sql.join(key.map((it) => sql.ref(it)));
  const last =
    after === undefined ? sql`` : sql`where (${order}) > (${sql.join(key.map((it) => after[it]))})`;
  const asked = sql<Row>`select * from ${sql.table(name)} ${last} order by ${order} limit ${PAGE}`;
  return (await asked.execute(transaction)).rows;
}

/** JSON text is written as what it says, in the order of the columns. */
function written({ row, json }: MovedTable, kept: Row): Row {
  const columns = Object.keys(row.shape);
  return Object.fromEntries(
    columns.map((it) => [it, json.includes(it) ? JSON.parse(String(kept[it])) : kept[it]]),
  );
}
