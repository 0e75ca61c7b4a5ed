import { bad, exactNumber, exactNumberText, good, type Problem, problem, type Result } from "#core/words";
import { Fraction } from "fraction.js";
import type { z } from "zod";
import type { mixSchema } from "./evening-document.ts";
import { payerKey } from "./payer-key.ts";

const NEXT =
  "Use single, concession, free, pay-what-you-can, monthly, pass-10 for a pass of ten or course-6 for a block of six.";

export type Share = { readonly key: string; readonly share: Fraction };

// A third is written 0.333333333: three of them miss 1 by 1e-9 and are meant as 1.
const TOLERANCE = new Fraction(1, 1_000_000_000);

/**
 * The shares of the people on the mats, scaled to add to exactly 1: three shares of 0.3333333333 are
 * thirds. Problems: "mix-key-unknown", "mix-share-out-of-range", "mix-not-one".
 */
export function readMix(mix: z.output<typeof mixSchema>, place = "mix"): Result<readonly Share[]> {
  const problems = Object.entries(mix).flatMap(([key, share]) => shareProblems(key, share, place));
  if (problems.length > 0) return bad(...problems);
  const shares = Object.entries(mix).map(([key, share]) => ({ key, share: exactNumber(share) }));
  const sum = shares.reduce((total, { share }) => total.add(share), new Fraction(0));
  if (sum.sub(1).abs().gt(TOLERANCE)) {
    const says = `The shares of the mix add to ${exactNumberText(sum)}, not to 1.`;
    return bad(problem("mix-not-one", place, says, "Change them so that everybody is counted once."));
  }
  return good(shares.map(({ key, share }) => ({ key, share: share.div(sum) })));
}

function shareProblems(key: string, share: number, place: string): readonly Problem[] {
  const at = `${place}.${key}`;
  if (payerKey(key) === null) {
    const says = `“${key.slice(0, 40)}” is no way to pay that we know.`;
    return [problem("mix-key-unknown", at, says, NEXT)];
  }
  if (share >= 0 && share <= 1) return [];
  const says = `A share of ${share} is not part of a whole.`;
  return [problem("mix-share-out-of-range", at, says, "Give a share from 0 to 1: 0.4 is 40 of 100 people.")];
}
