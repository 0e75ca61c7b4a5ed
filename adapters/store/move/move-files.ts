import { createReadStream, existsSync, mkdirSync, renameSync, rmSync } from "node:fs";
import { type FileHandle, open } from "node:fs/promises";
import { dirname } from "node:path";
import { bad, problem, type Result } from "#core/words";
import { settleFolder } from "../settle-file.ts";
import type { WholeStore } from "../sql-store.ts";
import { sqliteProblem } from "../sqlite-problem.ts";

export type MoveOutOrder = {
  readonly store: WholeStore;
  readonly to: string;
  /** whether a file that is there already may be replaced */
  readonly replace: boolean;
};

/**
 * Writes everything into a file, which gets its name when it is whole and on disk; answers the number of rows.
 * Problems: "backup-exists", "disk-full", "store-read-only", and those of the store.
 */
export async function moveOut({ store, to, replace }: MoveOutOrder): Promise<Result<number>> {
  if (existsSync(to) && !replace) return bad(exists(to));
  const building = `${to}.new-${process.pid}`;
  try {
    mkdirSync(dirname(to), { recursive: true });
    // it holds names and contacts: for nobody else on this computer
    const file = await open(building, "w", 0o600);
    const done = await written(file, store);
    if (done.ok) renameSync(building, to);
    if (done.ok) settleFolder(to);
    return done;
  } catch (error) {
    const known = sqliteProblem(error, to);
    if (known === undefined) throw error;
    return bad(known);
  } finally {
    rmSync(building, { force: true });
  }
}

async function written(file: FileHandle, store: WholeStore): Promise<Result<number>> {
  try {
    const done = await store.everythingOut(async (text) => void (await file.write(text)));
    await file.sync();
    return done;
  } finally {
    await file.close();
  }
}

/** Takes a file of everything in; answers the number of rows. Problems: "move-file-missing" and those of everythingIn. */
export async function moveIn({ store, from }: { readonly store: WholeStore; readonly from: string }) {
  if (!existsSync(from)) return bad(missing(from));
  return store.everythingIn(() => linesOf(from));
}

/** At line feeds alone: Node's own reader of lines also ends them at signs that JSON leaves in a text. */
async function* linesOf(file: string): AsyncGenerator<string> {
  let rest = "";
  for await (const part of createReadStream(file, "utf8")) {
    const lines = `${rest}${String(part)}`.split("\n");
    rest = lines.pop() ?? "";
    yield* lines;
  }
  if (rest !== "") yield rest;
}

function exists(to: string) {
  const next = "Give another name, or add --replace to replace it.";
  return problem("backup-exists", "FILE", `There is already a file ${to}.`, next);
}

function missing(from: string) {
  return problem("move-file-missing", "FILE", `There is no file ${from}.`, "Look whether the name is right.");
}
