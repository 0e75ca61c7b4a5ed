import type { Solver } from "#kernels/search";
import { mustBeAllowed } from "../allowed-lines.ts";
import type { ArrangedMatPlan } from "../arrangement/arrangement-types.ts";
import { matsSaid } from "../arrangement/most-progress.ts";
import { sightOptions } from "../arrangement/sight-options.ts";
import type { Hall } from "../hall.ts";
import { floorToFill } from "../mat-plan.ts";
import { type Sight, whoCannotSee } from "../sight/who-cannot-see.ts";
import { leaveOut } from "./leave-out.ts";
import { type SightCandidate, sightCandidates, type SightCandidatesOptions } from "./sight-candidates.ts";
import { slidLines } from "./slid-lines.ts";
import { thinnedPlan } from "./thinned-plan.ts";

export type SightPlan = {
  /** with the mats asked for and no more */
  readonly plan: ArrangedMatPlan;
  readonly sight: Sight;
  /** "in staggered lines, 0.70 m between long sides" */
  readonly says: string;
  /** mats of the plan it was chosen from that are left out */
  readonly leftOut: number;
  /** no other choice of as many mats of that plan hides fewer */
  readonly exact: boolean;
};

export type BestSight = {
  /** null while no plan with so many mats was found */
  readonly best: SightPlan | null;
  readonly tried: number;
  readonly of: number;
  /** nothing can be better: everybody sees */
  readonly proven: boolean;
  readonly sentences: readonly string[];
};

/**
 * A plan with so many mats of which as few as can be found cannot see the teacher, tried plan by plan: each step of
 * the generator tries one, and it ends where everybody sees or all are tried. Lines are slid along themselves; of a
 * plan with more mats the best ones to leave out are chosen, exactly where the solver comes to its end. Over all
 * plans it is the best found, and proven only where nobody is hidden. Throws for a count that is no whole number
 * above 0.
 */
export function* bestSight(
  hall: Hall,
  count: number,
  solver: Solver | null,
  options: SightCandidatesOptions = {},
): Generator<BestSight, void, undefined> {
  if (!Number.isSafeInteger(count) || count < 1) throw new RangeError(`not a number of mats: ${count}`);
  const candidates = sightCandidates(hall, solver === null ? options : { solver, ...options });
  if (candidates.length === 0) yield told(hall, count, null, 0, 0);
  let best: SightPlan | null = null;
  for (const [index, candidate] of candidates.entries()) {
    const found = sightPlan(hall, count, solver, candidate);
    if (found !== null && (best === null || hiddenIn(found) < hiddenIn(best))) best = found;
    yield told(hall, count, best, index + 1, candidates.length);
    if (best !== null && hiddenIn(best) === 0) return;
  }
}

function hiddenIn({ sight }: SightPlan): number {
  return sight.hidden.length;
}

/** Null where the plan has too few mats, or no place for the teacher is known. */
function sightPlan(
  hall: Hall,
  count: number,
  solver: Solver | null,
  { says, plan: planOf }: SightCandidate,
): SightPlan | null {
  const whole = planOf();
  if (whole.count < count) return null;
  // lines that are staggered stay as they are: their shift is what makes them so
  const slides = whole.arrangement === "lines" || whole.arrangement === "facing";
  const slid = slides ? slidLines(hall, whole) : whole;
  const options = sightOptions(slid);
  const all = whoCannotSee(hall, slid, options);
  if (all === null) return null;
  const { kept, exact } = leaveOut(slid.count, all.hidden, count, solver);
  const plan = kept.length === slid.count ? slid : thinnedPlan(hall, slid, kept);
  mustBeAllowed(hall, floorToFill(hall), plan.mats);
  const sight = whoCannotSee(hall, plan, options);
  return sight === null ? null : { plan, sight, says, leftOut: slid.count - count, exact };
}

function told(hall: Hall, count: number, best: SightPlan | null, tried: number, of: number): BestSight {
  const proven = best !== null && hiddenIn(best) === 0;
  return { best, tried, of, proven, sentences: sentencesOf(hall, count, best, tried) };
}

function sentencesOf(hall: Hall, count: number, best: SightPlan | null, tried: number): readonly string[] {
  const plans = `${tried} ${tried === 1 ? "plan" : "plans"}`;
  if (best === null) return noneSentences(hall, count, plans);
  const hidden = hiddenIn(best);
  if (hidden === 0)
    return [`From ${count === 1 ? "the one mat" : `all ${count} mats`} the teacher is seen, ${best.says}.`];
  const from = best.leftOut === 0 ? "" : `, of ${count + best.leftOut} that fit so`;
  return [
    `From ${hidden} of ${count} mats the teacher is not seen, ${best.says}${from}: the fewest of ${plans} tried, which does not prove that there is no better one.`,
    ...(best.leftOut === 0 || !best.exact
      ? []
      : [`Which ${matsSaid(best.leftOut)} to leave out is chosen exactly: no other choice hides fewer.`]),
  ];
}

function noneSentences({ teacher }: Hall, count: number, plans: string): readonly string[] {
  return [
    `No plan of ${matsSaid(count)} was found among ${plans} tried.`,
    ...(teacher === null
      ? ["Until a place is drawn for the teacher, who sees her is only known in two banks and in rings."]
      : []),
  ];
}
