import { linkSync, renameSync, rmSync } from "node:fs";
import Database from "better-sqlite3";
import { APPLICATION_ID } from "./check-file.ts";
import { migrate } from "./upgrade-file.ts";
import { settleFolder } from "./settle-file.ts";

/**
 * Makes an empty data file. It is built under another name and then given its own, so that a crash or a
 * full disk never leaves half a file where a data file is expected.
 */
export async function createFile(file: string): Promise<void> {
  const building = `${file}.new-${process.pid}`;
  rmSync(building, { force: true });
  try {
    await build(building);
    nameIt(building, file);
  } finally {
    rmSync(building, { force: true });
  }
  settleFolder(file);
}

async function build(file: string): Promise<void> {
  const connection = new Database(file);
  try {
    connection.pragma(`application_id = ${APPLICATION_ID}`);
    await migrate(connection, 0);
  } finally {
    connection.close();
  }
}

/** A link refuses a name that another program took meanwhile; a rename would replace its file. */
function nameIt(building: string, file: string): void {
  try {
    linkSync(building, file);
  } catch (error) {
    const code = error instanceof Error && "code" in error ? error.code : undefined;
    if (code === "EEXIST") return;
    // some memory sticks know no links
    renameSync(building, file);
  }
}
