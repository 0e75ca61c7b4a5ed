import type { Appended } from "#app/ports";
import type { Result } from "#core/words";

/** "done", "done before", "moved session/…", or the code of what is wrong */
export function outcomeOf(result: Result<Appended>): string {
  if (!result.ok) return result.problems.map((it) => it.code).join(" ");
  return result.value.outcome === "moved" ? `moved ${result.value.stream}` : result.value.outcome;
}

/** What is wrong, none when all is well. */
export function codesOf(result: Result<unknown>): readonly string[] {
  return result.ok ? [] : result.problems.map((it) => it.code);
}

/** Throws what is wrong. */
export function valueOf<Value>(result: Result<Value>): Value {
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
}
