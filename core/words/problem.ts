/**
 * What a person can cause and can mend.
 *
 * `code` is stable and documented; `place` is a path into what was given ("hire.perHour", "outline[3]"),
 * "" for the whole; `says` is what is wrong and `next` what to do, each one plain sentence.
 */
export type Problem = {
  readonly code: string;
  readonly place: string;
  readonly says: string;
  readonly next: string;
};

export type Result<Value> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly problems: readonly Problem[] };

export function good<Value>(value: Value): Result<Value> {
  return { ok: true, value };
}

export function bad(...problems: readonly Problem[]): Result<never> {
  return { ok: false, problems };
}

export function problem(code: string, place: string, says: string, next: string): Problem {
  return { code, place, says, next };
}

/** One line for a terminal or a log: what is wrong, where, what to do. */
export function problemSentence(it: Problem): string {
  const where = it.place === "" ? "" : ` (at ${it.place})`;
  return `${it.says}${where} ${it.next} [${it.code}]`;
}
