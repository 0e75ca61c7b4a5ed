import { writeFile } from "node:fs/promises";
import { resolve } from "node:path";
import { bad, good, type Problem, problem, type Result } from "#core/words";
import type { World } from "./world.ts";

/** Writes a file that was not there, or over one when told to; answers its whole name. Problems: "out-exists", "out-unwritable". */
export async function writeNewFile(
  name: string,
  bytes: Uint8Array,
  replace: boolean,
  world: World,
): Promise<Result<string>> {
  const file = resolve(world.folder, name);
  try {
    await writeFile(file, bytes, { flag: replace ? "w" : "wx" });
    return good(file);
  } catch (error) {
    return bad(unwritable(name, error instanceof Error && "code" in error ? String(error.code) : ""));
  }
}

const reasons: Readonly<Record<string, string>> = {
  EISDIR: "is a folder",
  EACCES: "may not be written",
  ENOENT: "stands in a folder that does not exist",
  ENOSPC: "has no room on the disk",
};

function unwritable(name: string, code: string): Problem {
  if (code === "EEXIST") {
    const next = "Give another name, or say --replace.";
    return problem("out-exists", "--out", `There is already a file ${name}.`, next);
  }
  const says = `The file ${name} ${reasons[code] ?? "cannot be written"}.`;
  return problem("out-unwritable", "--out", says, "Give another name or another folder.");
}
