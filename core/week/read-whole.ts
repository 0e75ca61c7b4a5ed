import { bad, good, problem, type Result } from "#core/words";

/** A whole number in its range. Problem: "week-count". */
export function readWhole(
  value: number,
  place: string,
  what: string,
  least: number,
  most: number,
): Result<number> {
  if (Number.isInteger(value) && value >= least && value <= most) return good(value);
  const says = `${value} cannot be meant as ${what}.`;
  return bad(problem("week-count", place, says, `Give a whole number from ${least} to ${most}.`));
}
