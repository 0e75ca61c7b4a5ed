import { bad, good, type Problem, problem, type Result } from "#core/words";
import { jsonFault } from "./json-fault.ts";
import { type Limit, readBytes } from "./read-bytes.ts";
import type { World } from "./world.ts";

/** A hall or a class is a few kilobytes; ten million bytes are something else. */
const MOST: Limit = {
  bytes: 10_000_000,
  says: "is larger than ten million bytes.",
  next: "A hall or a class is a few kilobytes; is it the right file?",
};

/**
 * The JSON in a file; "-" is standard input.
 * Problems: "input-missing", "input-too-large", "input-not-text", "input-not-json".
 */
export async function readInput(name: string, world: World): Promise<Result<unknown>> {
  const bytes = await readBytes(name, world, MOST);
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

/** Text is UTF-8, with or without the mark that some editors put before it. */
function decoded(bytes: Uint8Array): string | undefined {
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    return undefined;
  }
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
