import type { KeptPosting, PostingsOrder } from "#app/ports";
import { good, type Result } from "#core/words";
import { type Kysely, sql } from "kysely";
import type { Tables } from "../tables.ts";
import { streamName } from "./read-streams.ts";

type Database = Kysely<Tables>;

/** In the order of date, then action, then line. */
export async function readPostings(
  database: Database,
  practice: string,
  { from, until }: PostingsOrder,
): Promise<Result<readonly KeptPosting[]>> {
  const rows = await database
    .selectFrom("posting")
    .select(["action", "line", "date", "account", "commodity", "amount", "about"])
    .where("practice", "=", practice)
    .where("date", ">=", from)
    .where("date", "<=", until)
    .orderBy("date")
    .orderBy("action")
    .orderBy("line")
    .execute();
  return good(
    rows.map((row) => ({ ...row, about: row.about === "books" ? row.about : streamName(row.about) })),
  );
}

/** Sums that are not zero, in the order of account, then commodity. */
export async function readBalances(database: Database, practice: string, until: string) {
  const rows = await database
    .selectFrom("posting")
    // a sum of bigint is numeric on PostgreSQL, which comes as text
    .select(["account", "commodity", sql<number>`cast(sum(amount) as bigint)`.as("amount")])
    .where("practice", "=", practice)
    .where("date", "<=", until)
    .groupBy(["account", "commodity"])
    .having(sql`sum(amount)`, "<>", 0)
    .orderBy("account")
    .orderBy("commodity")
    .execute();
  return good(rows);
}
