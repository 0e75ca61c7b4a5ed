import { renameSync, rmSync } from "node:fs";
import { good, type Result } from "#core/words";
import Database from "better-sqlite3";
import { checkFile } from "./check-file.ts";
import { settleFile, settleFolder } from "./settle-file.ts";

/**
 * A copy of a data file as it is at one moment, also while Hallful is running on it. It is built under
 * another name, checked and put on disk before it gets its own; `before` runs just ahead of that.
 */
export function snapshotFile(from: string, to: string, before: () => void = () => {}): Result<null> {
  const building = `${to}.new-${process.pid}`;
  rmSync(building, { force: true });
  try {
    copy(from, building);
    const sound = checkFile(building);
    if (!sound.ok) return sound;
    settleFile(building);
    before();
    renameSync(building, to);
  } finally {
    rmSync(building, { force: true });
  }
  settleFolder(to);
  return good(null);
}

function copy(from: string, to: string): void {
  const connection = new Database(from, { readonly: true, fileMustExist: true });
  try {
    connection.prepare("vacuum into ?").run(to);
  } finally {
    connection.close();
  }
}
