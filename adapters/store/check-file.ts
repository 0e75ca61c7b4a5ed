import { accessSync, closeSync, constants, existsSync, openSync, readSync, statSync } from "node:fs";
import { dirname } from "node:path";
import { bad, good, type Result } from "#core/words";
import Database from "better-sqlite3";
import { damaged, foreign, missing, newer, readOnly } from "./data-file-problems.ts";
import { newestVersion } from "./migrations.ts";
import { sqliteProblem } from "./sqlite-problem.ts";

/** "HALL" in the four bytes that SQLite keeps for the name of the program that a file belongs to. */
export const APPLICATION_ID = 0x48414c4c;

const SQLITE_HEADER = "SQLite format 3\0";

/**
 * Whether a file is a sound data file of ours, without changing it; answers its version.
 * Problems: "data-file-missing", "data-file-foreign", "data-file-damaged", "data-file-newer", "store-busy".
 */
export function checkFile(file: string): Result<number> {
  if (!existsSync(file)) return bad(missing(file));
  const header = checkHeader(file);
  if (!header.ok) return header;
  let database: Database.Database | undefined;
  try {
    database = new Database(file, { readonly: true, fileMustExist: true });
    return checkContent(file, database);
  } catch (error) {
    const known = sqliteProblem(error, file);
    if (known === undefined) throw error;
    return bad(known);
  } finally {
    database?.close();
  }
}

/** The first hundred bytes tell a foreign file, and a file with no bytes has been cut off. */
function checkHeader(file: string): Result<null> {
  if (!statSync(file).isFile()) return bad(foreign(file, "is not a file"));
  const bytes = Buffer.alloc(SQLITE_HEADER.length);
  const open = openSync(file, "r");
  const read = readSync(open, bytes, 0, bytes.length, 0);
  closeSync(open);
  if (read === 0) return bad(damaged(file, "it is empty"));
  if (bytes.toString("latin1") !== SQLITE_HEADER) return bad(foreign(file, "was not written by Hallful"));
  return good(null);
}

function checkContent(file: string, database: Database.Database): Result<number> {
  const findings = database.pragma("quick_check(1)", { simple: true });
  if (findings !== "ok") return bad(damaged(file, "parts of it are missing or muddled"));
  if (database.pragma("application_id", { simple: true }) !== APPLICATION_ID) {
    return bad(foreign(file, "is a database of another program"));
  }
  const version = Number(database.pragma("user_version", { simple: true }));
  return version > newestVersion() ? bad(newer(file, version)) : good(version);
}

/** Problem: "store-read-only". The folder counts too, because SQLite keeps its journal beside the file. */
export function checkWritable(file: string): Result<null> {
  try {
    accessSync(dirname(file), constants.W_OK);
    if (existsSync(file) && statSync(file).isFile()) closeSync(openSync(file, "r+"));
    return good(null);
  } catch {
    return bad(readOnly(file));
  }
}
