import { bad, good, problem, type Result } from "#core/words";
import { nearest } from "./nearest.ts";

export type Kind = "hall" | "class";

/** Problem: "kind-unknown". */
export function readKind(word: string): Result<Kind> {
  if (word === "hall" || word === "class") return good(word);
  const near = nearest(word, ["hall", "class"]);
  const next = near === undefined ? "Say hall or class." : `Did you mean ${near}?`;
  return bad(problem("kind-unknown", "hall|class", `“${word.slice(0, 40)}” is not hall or class.`, next));
}
