import type { AmountWriter } from "#core/price";
import type { Problem } from "#core/words";
import type { Solver } from "#kernels/search";
import { bestWeek, weekSearch, type WeekSearch } from "./best-week.ts";
import { chosenLine, notChosen, rejectedLine } from "./candidate-lines.ts";
import { chooseWeek } from "./choose-week.ts";
import { lightestWeek } from "./lightest-week.ts";
import { tradeOff } from "./trade-off.ts";
import { noWeek } from "./week-found.ts";
import { type WeekHead, weekHead } from "./week-head.ts";
import {
  type ChosenJson,
  chosenJson,
  type PointJson,
  pointsJson,
  type RejectedJson,
  rejectedJson,
  type TargetJson,
  targetJson,
} from "./week-json.ts";
import { targetSentence } from "./week-sentences.ts";
import type { Week } from "./week-types.ts";

/** One piece of the answer, in the order in which a reader wants them. A later "week" takes the place of an earlier. */
export type WeekStep =
  | { readonly kind: "none"; readonly problem: Problem }
  | { readonly kind: "week"; readonly week: WeekHead; readonly sure: boolean }
  | { readonly kind: "chosen"; readonly line: ChosenJson }
  | { readonly kind: "target"; readonly target: TargetJson; readonly sentences: readonly string[] }
  | { readonly kind: "curve"; readonly by: "classes" | "evenings"; readonly points: readonly PointJson[] }
  | { readonly kind: "rejected"; readonly line: RejectedJson };

/** As far as a first look goes, in nodes: what is not proven by then is shown with its gap, and the search goes on. */
const LOOKS = [100, 1000];

/**
 * The same answer as weekAnswer piece by piece, for a screen that shows the week as soon as it is found and may be told
 * to stop after any piece.
 */
export function* weekSteps(
  week: Week,
  solver: Solver,
  write: AmountWriter,
): Generator<WeekStep, void, undefined> {
  yield* firstLooks(week, solver, write);
  const search = weekSearch(week, solver);
  const best = chooseWeek(search);
  if (best === null) {
    yield { kind: "none", problem: noWeek(search) };
    return;
  }
  yield { kind: "week", week: weekHead(week, best, write), sure: true };
  for (const at of best.chosen)
    yield { kind: "chosen", line: chosenJson(week, chosenLine(search, best, at)) };
  yield* targetStep(search, write);
  for (const by of ["classes", "evenings"] as const)
    yield { kind: "curve", by, points: pointsJson(week, tradeOff(search, by)) };
  for (const at of notChosen(search, best))
    yield { kind: "rejected", line: rejectedJson(week, rejectedLine(search, best, at)) };
}

/** What is found before it is proven; nothing where the first look proves it. */
function* firstLooks(week: Week, solver: Solver, write: AmountWriter): Generator<WeekStep, void, undefined> {
  for (const nodes of LOOKS) {
    const found = bestWeek(weekSearch(week, solver, { nodes }), { goal: "leaves" });
    if (found.kind === "impossible") return;
    if (found.kind === "unknown") continue;
    if (found.value === found.bound) return;
    yield { kind: "week", week: weekHead(week, { ...found, ties: [], margin: null }, write), sure: false };
  }
}

function* targetStep(search: WeekSearch, write: AmountWriter): Generator<WeekStep, void, undefined> {
  const { week } = search;
  if (week.target === null) return;
  const lightest = lightestWeek(search, week.target);
  const target = targetJson(week, lightest);
  if (target !== null) yield { kind: "target", target, sentences: targetSentence(week, lightest, write) };
}
