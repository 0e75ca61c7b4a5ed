import { bad, good, problem, type Result } from "#core/words";
import type { Given } from "./command.ts";

/** The whole number of an option, or another where it is not given. Problem: "option-not-whole". */
export function readWhole({ values }: Given, name: string, otherwise: number): Result<number> {
  const text = values[name];
  if (text === undefined) return good(otherwise);
  if (/^\d{1,6}$/.test(text)) return good(Number(text));
  const says = `“${text.slice(0, 40)}” is not a whole number.`;
  return bad(problem("option-not-whole", `--${name}`, says, `Write it like --${name} ${otherwise}.`));
}
