import type { Paper } from "./paper-types.ts";
import { isWritable } from "./text-width.ts";

/** The letters of a paper that its face has not, each once: a browser finds them elsewhere, a PDF has a ? for each. */
export function missingLetters({ pages }: Paper): readonly string[] {
  const says = pages.flatMap(({ parts }) => parts.map((it) => it.says)).join("");
  return [...new Set(Array.from(says))].filter((letter) => !isWritable(letter));
}
