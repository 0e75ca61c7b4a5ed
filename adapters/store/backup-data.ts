import { existsSync, mkdirSync, statSync } from "node:fs";
import { dirname } from "node:path";
import { bad, problem, type Result } from "#core/words";
import { checkFile, checkWritable } from "./check-file.ts";
import { isSameFile } from "./is-same-file.ts";
import { snapshotFile } from "./snapshot-file.ts";
import { sqliteProblem } from "./sqlite-problem.ts";

export type BackupOrder = {
  readonly data: string;
  readonly to: string;
  /** whether a file that is there already may be replaced */
  readonly replace: boolean;
};

/** Answers the size of the backup in bytes. Problems: those of checkFile, "backup-exists", "backup-onto-data". */
export function backupData(order: BackupOrder): Result<number> {
  const { data, to } = order;
  const sound = checkFile(data);
  if (!sound.ok) return sound;
  if (isSameFile(data, to)) return bad(ontoData(to));
  if (existsSync(to) && !order.replace) return bad(exists(to));
  try {
    mkdirSync(dirname(to), { recursive: true });
    const writable = checkWritable(to);
    if (!writable.ok) return writable;
    const done = snapshotFile(data, to);
    return done.ok ? { ok: true, value: statSync(to).size } : done;
  } catch (error) {
    const known = sqliteProblem(error, to);
    if (known === undefined) throw error;
    return bad(known);
  }
}

function exists(to: string) {
  const next = "Give another name, or add --replace to replace it.";
  return problem("backup-exists", "FILE", `There is already a file ${to}.`, next);
}

function ontoData(to: string) {
  const says = `${to} is the data file itself.`;
  return problem("backup-onto-data", "FILE", says, "Give another name, best on another disk.");
}
