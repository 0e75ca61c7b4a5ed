import type { Arrangement, Planned } from "./arrangement-types.ts";

/** The way mats stand, to go on with after "the most there can be" or "could fit". */
export const arrangementWords: Readonly<Record<Arrangement, string>> = {
  lines: "in straight lines",
  staggered: "in staggered lines",
  facing: "in two banks that face a clear middle",
  round: "in rings around the teacher",
  most: "along the walls or across them",
};

/** Whether the plan is the most there can be, or how many at best: always of its own arrangement. */
export function proofSentence(
  plan: Pick<Planned, "bound" | "proven"> & { arrangement: Arrangement },
): string {
  const how = arrangementWords[plan.arrangement];
  return plan.proven
    ? `No plan ${how} has more.`
    : `Not proven to be the most: at best ${plan.bound} could fit ${how}.`;
}
