import Database from "better-sqlite3";
import { Kysely, SqliteDialect, sql } from "kysely";
import { type Migration, migrations } from "./migrations.ts";
import { SQLITE_TONGUE } from "./tongue.ts";

/**
 * Brings an older data file up to this version, one migration a transaction. A copy of the file as it was
 * is kept beside it first, because an older Hallful cannot read the newer one; answers the copy's name.
 */
export async function upgradeFile(
  file: string,
  from: number,
  steps: readonly Migration[] = migrations,
): Promise<string> {
  const connection = new Database(file, { fileMustExist: true });
  try {
    const kept = `${file}.version-${from}`;
    connection.prepare("vacuum into ?").run(kept);
    await migrate(connection, from, steps);
    return kept;
  } finally {
    connection.close();
  }
}

export async function migrate(
  connection: Database.Database,
  from: number,
  steps: readonly Migration[] = migrations,
): Promise<void> {
  const database = new Kysely<never>({ dialect: new SqliteDialect({ database: connection }) });
  for (const step of steps.filter((it) => it.version > from)) {
    // oxlint-disable-next-line no-await-in-loop -- each version is made from the one before
    await database.transaction().execute(async (transaction) => {
      await step.up(transaction, SQLITE_TONGUE);
      await sql`pragma user_version = ${sql.lit(step.version)}`.execute(transaction);
    });
  }
}
