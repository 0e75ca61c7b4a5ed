import { type Problem, problem } from "#core/words";
import { damaged, practiceNotThere, readOnly } from "./data-file-problems.ts";

/** Codes of SQLite (https://www.sqlite.org/rescode.html) and of the file system that mean the same to her. */
const FULL = new Set(["SQLITE_FULL", "SQLITE_IOERR_WRITE", "ENOSPC", "EDQUOT"]);
const UNWRITABLE = new Set([
  "SQLITE_CANTOPEN",
  "EACCES",
  "EPERM",
  "EROFS",
  "ENOTDIR",
  "EISDIR",
  "EEXIST",
  "ENOTEMPTY",
]);

/** The problem behind an error of SQLite or of a file; undefined for an error that is a fault of ours. */
export function sqliteProblem(error: unknown, file: string): Problem | undefined {
  const code = codeOf(error);
  if (code === undefined) return undefined;
  if (FULL.has(code)) return diskFull(file);
  if (UNWRITABLE.has(code) || code.startsWith("SQLITE_READONLY")) return readOnly(file);
  if (isBusy(error)) return busy(file);
  if (code.startsWith("SQLITE_CORRUPT") || code === "SQLITE_NOTADB") {
    return damaged(file, "parts of it are missing or muddled");
  }
  if (code === "SQLITE_CONSTRAINT_FOREIGNKEY") return practiceNotThere();
  return undefined;
}

/** Whether another program was writing. */
export function isBusy(error: unknown): boolean {
  const code = codeOf(error) ?? "";
  return code.startsWith("SQLITE_BUSY") || code.startsWith("SQLITE_LOCKED");
}

function codeOf(error: unknown): string | undefined {
  if (!(error instanceof Error) || !("code" in error)) return undefined;
  return typeof error.code === "string" ? error.code : undefined;
}

function diskFull(file: string): Problem {
  const says = `There is no room left on the disk for ${file}.`;
  const next = "Nothing was saved and nothing before it was lost. Make room, then save again.";
  return problem("disk-full", "data", says, next);
}

function busy(file: string): Problem {
  const says = `Another program is holding the data file ${file}.`;
  const next = "Nothing was changed. Close the other one, or wait a moment, then try again.";
  return problem("store-busy", "data", says, next);
}
