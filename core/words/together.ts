import { bad, good, type Result } from "./problem.ts";

type Good<Part> = Part extends { readonly ok: true; readonly value: infer Value } ? Value : never;
type Read<Parts> = { readonly [Key in keyof Parts]: Good<Parts[Key]> };

/** Several readings as one: all of the values, or all of the problems in the order of the parts. */
export function together<const Parts extends Readonly<Record<string, Result<unknown>>>>(
  parts: Parts,
): Result<Read<Parts>> {
  const problems = Object.values(parts).flatMap((part) => (part.ok ? [] : part.problems));
  if (problems.length > 0) return bad(...problems);
  const entries = Object.entries(parts).map(([key, part]) => [key, part.ok ? part.value : undefined]);
  // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- every part is good here
  return good(Object.fromEntries(entries) as Read<Parts>);
}

/** A list of readings as the reading of a list, with every problem kept. */
export function togetherInOrder<Value>(parts: readonly Result<Value>[]): Result<readonly Value[]> {
  const problems = parts.flatMap((part) => (part.ok ? [] : part.problems));
  return problems.length > 0
    ? bad(...problems)
    : good(parts.flatMap((part) => (part.ok ? [part.value] : [])));
}
