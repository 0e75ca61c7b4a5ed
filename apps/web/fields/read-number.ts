import { bad, good, problem, type Result } from "#core/words";

/** What a field takes: the least and the most, and whether only whole numbers. */
export type NumberRange = { readonly least: number; readonly most: number; readonly whole?: boolean };

const PLAIN = /^[+-]?(\d+(\.\d*)?|\.\d+)$/;

/**
 * Reads what was typed as a number. Problems: "number-unreadable", "number-not-whole",
 * "number-out-of-range".
 */
export function readNumber(text: string, range: NumberRange, place: string): Result<number> {
  const trimmed = text.trim().replace("−", "-");
  if (!PLAIN.test(trimmed)) {
    const says = trimmed === "" ? "There is no number here." : `“${trimmed}” is not a number.`;
    return bad(problem("number-unreadable", place, says, `Write it in figures, like ${sample(range)}.`));
  }
  const number = Number(trimmed);
  if (range.whole === true && !Number.isInteger(number)) {
    return bad(
      problem("number-not-whole", place, `${trimmed} is not a whole number.`, "Write it without a fraction."),
    );
  }
  if (number < range.least || number > range.most) {
    return bad(problem("number-out-of-range", place, `${trimmed} cannot be right here.`, rangeWords(range)));
  }
  return good(number === 0 ? 0 : number);
}

function sample({ least, most, whole }: NumberRange): string {
  const middle = Math.min(most, Math.max(least, whole === true ? 12 : 1.5));
  return String(middle);
}

function rangeWords({ least, most }: NumberRange): string {
  return `Give a number from ${least} to ${most}.`;
}
