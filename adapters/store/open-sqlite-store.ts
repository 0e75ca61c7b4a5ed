import { existsSync, mkdirSync } from "node:fs";
import { dirname } from "node:path";
import { bad, good, type Result } from "#core/words";
import Database from "better-sqlite3";
import { Kysely, SqliteDialect, sql } from "kysely";
import { checkFile, checkWritable } from "./check-file.ts";
import { createFile } from "./create-file.ts";
import { newestVersion } from "./migrations.ts";
import { sqlStore, type WholeStore } from "./sql-store.ts";
import { isBusy, sqliteProblem } from "./sqlite-problem.ts";
import type { Tables } from "./tables.ts";
import { upgradeFile } from "./upgrade-file.ts";

export type SqliteOptions = {
  /** the data file; it is made when it does not exist */
  readonly file: string;
  /** ISO 8601 instant, UTC */
  readonly now: () => string;
};

/** How long a statement waits for another program that is writing; nothing else is answered meanwhile. */
const BUSY_MILLISECONDS = 20;

/** How often a save is tried: 10 + 20 + … + 190 milliseconds between are two seconds before "store-busy". */
const MOST_TRIES = 20;

/**
 * Opens the data file, making it or bringing it up to this version first. WAL with synchronous FULL: what
 * was answered is on disk, also when the power goes.
 * Problems: those of checkFile and "store-read-only", "disk-full".
 */
export async function openSqliteStore(options: SqliteOptions): Promise<Result<WholeStore>> {
  try {
    const ready = await readyFile(options.file);
    if (!ready.ok) return ready;
    return good(storeOver(connect(options.file), options));
  } catch (error) {
    const known = sqliteProblem(error, options.file);
    if (known === undefined) throw error;
    return bad(known);
  }
}

/** A store over an open connection; tests give one with a limit of pages or one that cannot write. */
export function storeOver(
  connection: Database.Database,
  options: SqliteOptions,
  mostTries = MOST_TRIES,
): WholeStore {
  const database = new Kysely<Tables>({ dialect: new SqliteDialect({ database: connection }) });
  return sqlStore({
    database,
    begin: () => database.startTransaction().execute(),
    // the first read of a transaction fixes what all of it see
    atOneMoment: (work) => database.transaction().execute(work),
    problemOf: (error) => sqliteProblem(error, options.file),
    pauseBeforeNext: (error, tries) => (isBusy(error) && tries < mostTries ? 10 * tries : null),
    // the log still has the pages as they were before; while another program reads it, it empties at the next one
    afterErasing: () => connection.pragma("wal_checkpoint(truncate)"),
    asBytes: sql`collate binary`,
    now: options.now,
  });
}

export function connect(file: string): Database.Database {
  const connection = new Database(file, { fileMustExist: true, timeout: BUSY_MILLISECONDS });
  connection.pragma("journal_mode = wal");
  connection.pragma("synchronous = full");
  connection.pragma("foreign_keys = on");
  // what was deleted is overwritten, not only given free: a name that was erased is not in the file any more
  connection.pragma("secure_delete = on");
  return connection;
}

async function readyFile(file: string): Promise<Result<null>> {
  mkdirSync(dirname(file), { recursive: true });
  const writable = checkWritable(file);
  if (!writable.ok) return writable;
  if (!existsSync(file)) await createFile(file);
  const version = checkFile(file);
  if (!version.ok) return version;
  if (version.value < newestVersion()) await upgradeFile(file, version.value);
  return good(null);
}
