import { bad, good, problem, type Result } from "#core/words";
import { weekSearch, type WeekSearch } from "./best-week.ts";
import { type ChosenLine, chosenLines, type RejectedLine, rejectedLines } from "./candidate-lines.ts";
import { type CountedWeek, countWeek } from "./check-week.ts";
import { type ChosenWeek, chooseWeek } from "./choose-week.ts";
import { conflict } from "./conflict.ts";
import { type Lightest, lightestWeek } from "./lightest-week.ts";
import { type TradePoint, tradeOff } from "./trade-off.ts";
import type { Week } from "./week-types.ts";
import { bindingWords, listed } from "./week-words.ts";
import type { Limits, Solver } from "#kernels/search";

/** All that is answered about one week. */
export type WeekFound = {
  readonly best: ChosenWeek;
  readonly counted: CountedWeek;
  readonly chosen: readonly ChosenLine[];
  readonly rejected: readonly RejectedLine[];
  readonly byClasses: readonly TradePoint[];
  readonly byEvenings: readonly TradePoint[];
  readonly lightest: Lightest | null;
};

/** Problems: "week-impossible" with a minimal set of limits and promises that conflict; "week-not-found". */
export function weekFound(week: Week, solver: Solver, limits?: Limits): Result<WeekFound> {
  const search = weekSearch(week, solver, limits);
  const best = chooseWeek(search);
  if (best === null) return bad(noWeek(search));
  return good({
    best,
    counted: countWeek(week, best.chosen),
    chosen: chosenLines(search, best),
    rejected: rejectedLines(search, best),
    byClasses: tradeOff(search, "classes"),
    byEvenings: tradeOff(search, "evenings"),
    lightest: week.target === null ? null : lightestWeek(search, week.target),
  });
}

/** Why there is no week. Problems: "week-impossible", "week-not-found". */
export function noWeek(search: WeekSearch) {
  const bindings = conflict(search);
  if (bindings === null) {
    const says = "The search was stopped before it found a week.";
    return problem("week-not-found", "candidates", says, "Leave out the candidates that matter least.");
  }
  const names = bindings.map((it) => bindingWords(search.week, it));
  const says = `No week can keep to these together: ${listed(names)}.`;
  const next = "Let go of any one of them, and these are no longer in each other’s way.";
  return problem("week-impossible", "limits", says, next);
}
