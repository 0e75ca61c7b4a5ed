import { copyFileSync, constants, existsSync, mkdirSync, rmSync } from "node:fs";
import { dirname, join, parse } from "node:path";
import { bad, good, problem, type Result } from "#core/words";
import Database from "better-sqlite3";
import { checkFile, checkWritable } from "./check-file.ts";
import { isSameFile } from "./is-same-file.ts";
import { settleFile } from "./settle-file.ts";
import { snapshotFile } from "./snapshot-file.ts";
import { sqliteProblem } from "./sqlite-problem.ts";

export type RestoreOrder = {
  readonly from: string;
  readonly data: string;
  /** ISO 8601 instant, UTC, for the name under which the replaced file is kept */
  readonly now: string;
};

/**
 * Puts a backup in the place of the data file. The backup is checked first; what was there is kept beside
 * it, and its name answered (null when nothing was there).
 * Problems: those of checkFile, "restore-onto-itself", "data-in-use", "store-read-only", "disk-full".
 */
export function restoreData(order: RestoreOrder): Result<string | null> {
  const { from, data } = order;
  const sound = checkFile(from);
  if (!sound.ok) return sound;
  if (isSameFile(from, data)) return bad(ontoItself(from));
  try {
    mkdirSync(dirname(data), { recursive: true });
    const writable = checkWritable(data);
    return writable.ok ? replaceData(order) : writable;
  } catch (error) {
    const known = sqliteProblem(error, data);
    if (known === undefined) throw error;
    return bad(known);
  }
}

/** What was there is copied first, so that it is kept as it was even if SQLite then mends it on opening. */
function replaceData({ from, data, now }: RestoreOrder): Result<string | null> {
  if (!existsSync(data)) return replaced(from, data, null);
  const kept = keptName(data, now);
  copyWithJournals(data, kept);
  const done = isInUse(data) ? bad(inUse(data)) : replaced(from, data, kept);
  if (done.ok) foldJournal(kept);
  else removeWithJournals(kept);
  return done;
}

/** A journal left from a crash belongs to the old file and would be played into the new one. */
function replaced(from: string, data: string, kept: string | null): Result<string | null> {
  const done = snapshotFile(from, data, () => {
    for (const journal of JOURNALS) rmSync(`${data}${journal}`, { force: true });
  });
  return done.ok ? good(kept) : done;
}

/** What SQLite may keep beside a file. */
const JOURNALS = ["-wal", "-shm", "-journal"];

function copyWithJournals(data: string, kept: string): void {
  for (const part of ["", "-wal", "-journal"]) {
    if (!existsSync(`${data}${part}`)) continue;
    copyFileSync(`${data}${part}`, `${kept}${part}`, constants.COPYFILE_EXCL);
    settleFile(`${kept}${part}`);
  }
}

function removeWithJournals(kept: string): void {
  for (const part of ["", ...JOURNALS]) rmSync(`${kept}${part}`, { force: true });
}

/** A sound file that is kept should be one file, like any backup. */
function foldJournal(kept: string): void {
  if (checkFile(kept).ok) isInUse(kept);
}

/**
 * Leaving WAL needs the file for oneself, so that SQLite refuses it while anybody has it open. It also
 * folds the journal into the file. What SQLite cannot open, nobody has open.
 */
function isInUse(data: string): boolean {
  try {
    const connection = new Database(data, { timeout: 0 });
    try {
      connection.pragma("journal_mode = delete");
    } finally {
      connection.close();
    }
    return false;
  } catch (error) {
    const code = error instanceof Error && "code" in error ? String(error.code) : "";
    return code.startsWith("SQLITE_BUSY") || code.startsWith("SQLITE_LOCKED");
  }
}

/** data/hallful.sqlite is kept as data/hallful-replaced-2026-11-25-094500.sqlite, then …-094500-2.sqlite */
function keptName(data: string, now: string): string {
  const { dir, name, ext } = parse(data);
  const stamp = now.slice(0, 19).replaceAll(":", "").replace("T", "-");
  const named = (number: number) =>
    join(dir, `${name}-replaced-${stamp}${number === 1 ? "" : `-${number}`}${ext}`);
  let number = 1;
  while (existsSync(named(number))) number += 1;
  return named(number);
}

function ontoItself(from: string) {
  const says = `${from} is the data file itself.`;
  return problem("restore-onto-itself", "FILE", says, "Name a backup to restore from.");
}

function inUse(data: string) {
  const says = `Hallful is running with the data file ${data}.`;
  return problem("data-in-use", "data", says, "Nothing was changed. Stop it with Ctrl+C, then restore.");
}
