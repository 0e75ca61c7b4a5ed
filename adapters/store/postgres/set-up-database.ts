import { bad, good, problem, type Result } from "#core/words";
import { type Kysely, sql, type Transaction } from "kysely";
import { type Migration, migrations, newestVersion } from "../migrations.ts";
import type { Tables } from "../tables.ts";
import { POSTGRES_TONGUE } from "../tongue.ts";

/** "HALL" as a number: the lock under which one program at a time looks after the tables. */
const LOCK = 0x48414c4c;

type Database = Kysely<Tables>;

/**
 * Makes the tables in an empty schema, or brings older ones up to this version, all in one transaction and one
 * program at a time. A schema with other tables in it is left alone.
 * Problems: "database-forgetful", "database-foreign", "database-newer".
 */
export async function setUpDatabase(
  database: Database,
  where: string,
  steps: readonly Migration[] = migrations,
): Promise<Result<null>> {
  const durable = await checkDurable(database, where);
  if (!durable.ok) return durable;
  const found = await versionOf(database);
  if (found === steps.length) return good(null);
  return database
    .transaction()
    .setIsolationLevel("read committed")
    .execute(async (transaction) => {
      await sql`select pg_advisory_xact_lock(${LOCK})`.execute(transaction);
      // another program may have done it while this one waited
      const version = await versionOf(transaction);
      if (version === undefined) return bad(foreign(where));
      if (version > steps.length) return bad(newer(where, version));
      await bringUp(transaction, version, steps);
      return good(null);
    });
}

/** What is answered must be on disk; a server can be told to answer before, and then a power cut loses saves. */
async function checkDurable(database: Database, where: string): Promise<Result<null>> {
  const { rows } = await sql<{ name: string }>`select name from pg_settings
    where name in ('fsync', 'full_page_writes', 'synchronous_commit') and setting = 'off'
    order by name`.execute(database);
  return rows.length === 0
    ? good(null)
    : bad(
        forgetful(
          where,
          rows.map((row) => row.name),
        ),
      );
}

/** 0 for an empty schema, undefined for one that holds somebody else's tables. */
async function versionOf(database: Database): Promise<number | undefined> {
  const { rows } = await sql<{ ours: boolean; tables: number }>`select
    to_regclass('hallful_version') is not null as ours,
    (select count(*) from pg_class where relnamespace = current_schema()::regnamespace and relkind in ('r', 'p', 'v', 'm', 'f'))
      as tables`.execute(database);
  const [found] = rows;
  if (found?.ours !== true) return found?.tables === 0 ? 0 : undefined;
  const kept = await sql<{ version: number }>`select version from hallful_version`.execute(database);
  return kept.rows[0]?.version ?? 0;
}

async function bringUp(
  transaction: Transaction<Tables>,
  from: number,
  steps: readonly Migration[],
): Promise<void> {
  await sql`create table if not exists hallful_version (
    only_row integer not null primary key check (only_row = 1), version integer not null)`.execute(
    transaction,
  );
  for (const step of steps.filter((it) => it.version > from)) {
    // oxlint-disable-next-line no-await-in-loop -- each version is made from the one before
    await step.up(transaction.withTables<never>(), POSTGRES_TONGUE);
  }
  await sql`insert into hallful_version (only_row, version) values (1, ${steps.length})
    on conflict (only_row) do update set version = excluded.version`.execute(transaction);
}

function foreign(where: string) {
  const says = `Tables of another program stand in ${where}.`;
  const next = "Nothing was changed in it. Give Hallful a database of its own, or a schema of its own in it.";
  return problem("database-foreign", "DATABASE_URL", says, next);
}

function newer(where: string, version: number) {
  const says = `What is kept in ${where} was written by a newer Hallful (version ${version}).`;
  const next = `Nothing was changed in it. Use the newer Hallful; this one knows up to version ${newestVersion()}.`;
  return problem("database-newer", "DATABASE_URL", says, next);
}

function forgetful(where: string, settings: readonly string[]) {
  const says = `${settings.join(" and ")} is off in ${where}, so that a power cut would lose what was saved.`;
  const next = "Turn it on in the settings of the server; Hallful only says saved when it is on disk.";
  return problem("database-forgetful", "DATABASE_URL", says, next);
}
