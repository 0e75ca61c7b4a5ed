import { bad, good, problem, type Range, type Result } from "#core/words";

/** A whole number of people, mats or sessions. Problems: "count-not-whole", "count-out-of-range". */
export function readCount(value: number, place: string, what: string, range: Range): Result<number> {
  if (!Number.isFinite(value) || value < range.least || value > range.most) {
    const next = `Give a whole number from ${range.least} to ${range.most}.`;
    return bad(problem("count-out-of-range", place, `${value} ${what} cannot be meant.`, next));
  }
  if (Number.isInteger(value)) return good(value);
  return bad(
    problem("count-not-whole", place, `${value} is not a whole number of ${what}.`, "Count whole ones."),
  );
}

/** A number that need not be whole, like newcomers a week. Problem: "mean-out-of-range". */
export function readMean(value: number, place: string, what: string, range: Range): Result<number> {
  if (value >= range.least && value <= range.most) return good(value);
  const next = `Give a number from ${range.least} to ${range.most}; one like 1.5 is fine.`;
  return bad(problem("mean-out-of-range", place, `${value} ${what} cannot be meant.`, next));
}

/** A share with its ends allowed. Problem: "share-out-of-range". */
export function readShare(value: number, place: string, what: string, most = 1): Result<number> {
  if (value >= 0 && value <= most) return good(value);
  const says = `${what} of ${value} cannot be meant.`;
  const next =
    value > 1 && value <= 100
      ? `Give a share between 0 and ${most}: ${value / 100} for ${value} %.`
      : `Give a share between 0 and ${most}.`;
  return bad(problem("share-out-of-range", place, says, next));
}
