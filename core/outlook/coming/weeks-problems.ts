import { type Problem, problem } from "#core/words";

/** Ten years: nothing that is told of a class reaches further. */
const MOST = 520;
const NEXT = `Give a whole number from 1 to ${MOST}.`;

export function aheadProblems(ahead: number): readonly Problem[] {
  const says = `Looking ${ahead} ahead cannot be meant.`;
  return isWithin(ahead) ? [] : [problem("weeks-ahead-out-of-range", "ahead", says, NEXT)];
}

export function notSeenProblems(weeks: number): readonly Problem[] {
  const says = `Not seen for ${weeks} cannot be meant.`;
  return isWithin(weeks) ? [] : [problem("not-seen-out-of-range", "notSeenFor", says, NEXT)];
}

export function goneAfterProblems(periods: number): readonly Problem[] {
  const says = `Gone after ${periods} cannot be meant.`;
  return isWithin(periods) ? [] : [problem("gone-after-out-of-range", "goneAfter", says, NEXT)];
}

function isWithin(count: number): boolean {
  return Number.isInteger(count) && count >= 1 && count <= MOST;
}
