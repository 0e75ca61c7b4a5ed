import { type Arrangement, arrangements, type CapacityLimits } from "#core/hall";
import { bad, good, type Problem, problem, type Result } from "#core/words";
import type { Given } from "./command.ts";
import { nearest } from "./nearest.ts";
import { readCaps } from "./read-caps.ts";

export type FitOptions = {
  /** undefined: what the hall says, else lines */
  readonly arrangement: Arrangement | "all" | undefined;
  readonly caps: CapacityLimits;
  /** that `most` may search; 10 unless told */
  readonly seconds: number;
  /** so many, with as few as can be found who cannot see; undefined: as many as fit */
  readonly mats: number | undefined;
};

export const fitArrangements: readonly string[] = [...arrangements, "all"];

const USUAL_SECONDS = 10;

/** Problems: "arrangement-unknown", "cap-unreadable", "seconds-unreadable", "mats-unreadable"; all at once. */
export function readFitOptions(given: Given): Result<FitOptions> {
  const caps = readCaps(given);
  const { arrangement, seconds, mats } = given.values;
  const problems = [
    ...(caps.ok ? [] : caps.problems),
    ...(arrangement === undefined || isArrangement(arrangement) ? [] : [arrangementUnknown(arrangement)]),
    ...(seconds === undefined || isSeconds(seconds) ? [] : [secondsUnreadable(seconds)]),
    ...(mats === undefined || /^[1-9]\d{0,3}$/.test(mats) ? [] : [matsUnreadable(mats)]),
  ];
  if (problems.length > 0 || !caps.ok) return bad(...problems);
  return good({
    arrangement: arrangement !== undefined && isArrangement(arrangement) ? arrangement : undefined,
    caps: caps.value,
    seconds: seconds === undefined ? USUAL_SECONDS : Number(seconds),
    mats: mats === undefined ? undefined : Number(mats),
  });
}

function isArrangement(text: string): text is Arrangement | "all" {
  return fitArrangements.includes(text);
}

/** "10" and "0.5", more than none and an hour at most. */
function isSeconds(text: string): boolean {
  return /^\d{1,4}(\.\d{1,3})?$/.test(text) && Number(text) > 0 && Number(text) <= 3600;
}

function arrangementUnknown(arrangement: string): Problem {
  const near = nearest(arrangement, fitArrangements);
  const next = near === undefined ? `There are: ${fitArrangements.join(", ")}.` : `Did you mean ${near}?`;
  const says = `There is no arrangement “${arrangement.slice(0, 40)}”.`;
  return problem("arrangement-unknown", "--arrangement", says, next);
}

function matsUnreadable(mats: string): Problem {
  const says = `“${mats.slice(0, 40)}” is not a number of mats to lay.`;
  return problem("mats-unreadable", "--mats", says, "Give a whole number from 1 to 9999.");
}

function secondsUnreadable(seconds: string): Problem {
  const says = `“${seconds.slice(0, 40)}” is not a time to search for.`;
  return problem("seconds-unreadable", "--seconds", says, "Give seconds over 0, up to 3600.");
}
