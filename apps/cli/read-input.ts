import { readFile, stat } from "node:fs/promises";
import { resolve } from "node:path";
import { bad, good, type Problem, problem, type Result } from "#core/words";
import { jsonFault } from "./json-fault.ts";
import type { World } from "./world.ts";

/** A hall or a class is a few kilobytes; ten million bytes are something else. */
const MOST_BYTES = 10_000_000;

/**
 * The JSON in a file; "-" is standard input.
 * Problems: "input-missing", "input-too-large", "input-not-text", "input-not-json".
 */
export async function readInput(name: string, world: World): Promise<Result<unknown>> {
  const bytes = name === "-" ? await standardInput(world) : await fileBytes(name, world);
  if (!bytes.ok) return bytes;
  const called = name === "-" ? "Standard input" : name;
  const text = decoded(bytes.value);
  if (text === undefined) return bad(notText(called));
  if (text.trim() === "") return bad(empty(called));
  try {
    return good(JSON.parse(text));
  } catch (error) {
    return bad(notJson(called, jsonFault(text, error instanceof Error ? error.message : "")));
  }
}

async function standardInput(world: World): Promise<Result<Uint8Array>> {
  const bytes = await world.input();
  return bytes.length > MOST_BYTES ? bad(tooLarge("Standard input")) : good(bytes);
}

async function fileBytes(name: string, world: World): Promise<Result<Uint8Array>> {
  const file = resolve(world.folder, name);
  try {
    const { size } = await stat(file);
    return size > MOST_BYTES ? bad(tooLarge(name)) : good(await readFile(file));
  } catch (error) {
    const code = error instanceof Error && "code" in error ? String(error.code) : "";
    return bad(missing(name, code));
  }
}

/** Text is UTF-8, with or without the mark that some editors put before it. */
function decoded(bytes: Uint8Array): string | undefined {
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    return undefined;
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

function tooLarge(called: string): Problem {
  const says = `${called} is larger than ten million bytes.`;
  return problem("input-too-large", "", says, "A hall or a class is a few kilobytes; is it the right file?");
}

function notText(called: string): Problem {
  const says = `${called} is not text in UTF-8.`;
  return problem("input-not-text", "", says, "Save it as UTF-8, or look whether it is the right file.");
}

function empty(called: string): Problem {
  return problem("input-not-json", "", `${called} is empty.`, "Give a document in JSON.");
}

function notJson(called: string, fault: string): Problem {
  const says = `${called} is not JSON: ${fault}.`;
  return problem("input-not-json", "", says, "Mend it there, or look whether it is the right file.");
}
