import { readFile, stat } from "node:fs/promises";
import { resolve } from "node:path";
import { bad, good, type Problem, problem, type Result } from "#core/words";
import type { World } from "./world.ts";

/** How much may be read, and what is said when there is more. */
export type Limit = { readonly bytes: number; readonly says: string; readonly next: string };

/** What a file holds; "-" is standard input. Problems: "input-missing", "input-too-large". */
export async function readBytes(name: string, world: World, most: Limit): Promise<Result<Uint8Array>> {
  if (name === "-") {
    const bytes = await world.input();
    return bytes.length > most.bytes ? bad(tooLarge("Standard input", most)) : good(bytes);
  }
  const file = resolve(world.folder, name);
  try {
    const { size } = await stat(file);
    return size > most.bytes ? bad(tooLarge(name, most)) : good(await readFile(file));
  } catch (error) {
    const code = error instanceof Error && "code" in error ? String(error.code) : "";
    return bad(missing(name, code));
  }
}

const reasons: Readonly<Record<string, string>> = {
  EISDIR: "is a folder",
  EACCES: "may not be read",
  ENOENT: "does not exist",
};

function missing(name: string, code: string): Problem {
  const says = `The file ${name} ${reasons[code] ?? "cannot be read"}.`;
  return problem("input-missing", name, says, "Look whether the name is right; - reads standard input.");
}

function tooLarge(called: string, { says, next }: Limit): Problem {
  return problem("input-too-large", "", `${called} ${says}`, next);
}
