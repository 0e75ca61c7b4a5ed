import { type AmountWriter, coinText, type PartLine } from "#core/price";
import { exactNumber } from "#core/words";
import type { Change, ChosenLine, RejectedLine } from "./candidate-lines.ts";
import { countWeek } from "./check-week.ts";
import type { Lightest } from "./lightest-week.ts";
import type { TradePoint } from "./trade-off.ts";
import type { WeekFound } from "./week-found.ts";
import { type DayJson, type LoadJson, loadOf, weekHead } from "./week-head.ts";
import { weekSentences } from "./week-sentences.ts";
import type { Week } from "./week-types.ts";
import { bindingWords, candidateAt } from "./week-words.ts";

/** The answer for other programs: amounts are decimal strings, a year unless said; candidates stand by their ids. */
export type WeekJson = {
  readonly format: "hallful/week-answer@1";
  readonly currency: string;
  readonly sentences: readonly string[];
  /** after travel; `wishes` is the price of those not met, `leaves` what is left of both, `bound` the most any week leaves */
  readonly earns: string;
  readonly wishes: string;
  readonly leaves: string;
  readonly bound: string;
  readonly proven: boolean;
  readonly load: LoadJson;
  readonly days: readonly DayJson[];
  readonly chosen: readonly ChosenJson[];
  readonly rejected: readonly RejectedJson[];
  readonly ties: readonly (readonly string[])[];
  readonly nextBestLeavesLess: string | null;
  readonly curve: { readonly classes: readonly PointJson[]; readonly evenings: readonly PointJson[] };
  readonly target: TargetJson | null;
  /** ways worked out from the map, and the fields that the document marks */
  readonly guesses: readonly string[];
  readonly working: readonly PartLine[];
};

export type ChosenJson = {
  readonly id: string;
  readonly name: string;
  readonly adds: string;
  readonly minutesAWeek: number;
  /** for each hour from door to door that it adds; null where it adds none */
  readonly perHour: string | null;
  readonly frees: { readonly evening: boolean; readonly day: boolean };
  readonly without: ChangeJson | null;
};

export type ChangeJson = {
  readonly leavesLess: string;
  readonly comes: readonly string[];
  readonly goes: readonly string[];
  readonly proven: boolean;
};

export type RejectedJson = {
  readonly id: string;
  readonly name: string;
  /** how much more a session would have to bring, rounded up to the coin; null where money cannot help */
  readonly lacksPerSession: string | null;
  readonly withIt: ChangeJson | null;
  /** a minimal set of limits and promises that leaves no room for it */
  readonly noRoomFor: readonly string[];
};

export type PointJson = {
  readonly count: number;
  readonly leaves: string;
  readonly proven: boolean;
  readonly chosen: readonly string[];
};

export type TargetJson = {
  readonly target: string;
  readonly reached: boolean | null;
  readonly earns: string | null;
  readonly proven: boolean;
  readonly load: LoadJson | null;
  readonly chosen: readonly string[];
};

export function weekJson(week: Week, found: WeekFound, write: AmountWriter): WeekJson {
  const { chosen: _, guessedWays, working, ...head } = weekHead(week, found.best, write);
  return {
    format: "hallful/week-answer@1",
    currency: week.currency,
    ...head,
    sentences: weekSentences(week, found, write),
    chosen: found.chosen.map((line) => chosenJson(week, line)),
    rejected: found.rejected.map((line) => rejectedJson(week, line)),
    curve: { classes: pointsJson(week, found.byClasses), evenings: pointsJson(week, found.byEvenings) },
    target: targetJson(week, found.lightest),
    guesses: [...week.guesses, ...guessedWays],
    working,
  };
}

export function pointsJson(week: Week, found: readonly TradePoint[]): readonly PointJson[] {
  return found.map(({ count, leaves, bound, chosen }) => ({
    count,
    leaves: coinText(exactNumber(leaves), week.currency),
    proven: leaves === bound,
    chosen: chosen.map((at) => candidateAt(week, at).id),
  }));
}

function changeJson(week: Week, { loses, comes, goes, proven }: Change): ChangeJson {
  const ids = (chosen: readonly number[]) => chosen.map((at) => candidateAt(week, at).id);
  return {
    leavesLess: coinText(exactNumber(loses), week.currency),
    comes: ids(comes),
    goes: ids(goes),
    proven,
  };
}

export function chosenJson(week: Week, line: ChosenLine): ChosenJson {
  const { id, name, sessions } = candidateAt(week, line.candidate);
  const perHour =
    line.minutes <= 0
      ? null
      : coinText(
          exactNumber(line.adds)
            .mul(60)
            .div(line.minutes * sessions),
          week.currency,
        );
  return {
    id,
    name,
    adds: coinText(exactNumber(line.adds), week.currency),
    minutesAWeek: line.minutes,
    perHour,
    frees: { evening: line.evening, day: line.day },
    without: line.without === null ? null : changeJson(week, line.without),
  };
}

export function rejectedJson(week: Week, line: RejectedLine): RejectedJson {
  const { id, name, sessions } = candidateAt(week, line.candidate);
  const lacks = line.kind === "lacks" ? Math.ceil(line.change.loses / sessions) : null;
  return {
    id,
    name,
    lacksPerSession: lacks === null ? null : coinText(exactNumber(lacks), week.currency),
    withIt: line.kind === "lacks" ? changeJson(week, line.change) : null,
    noRoomFor: line.kind === "no room" ? line.conflict.map((it) => bindingWords(week, it)) : [],
  };
}

export function targetJson(week: Week, lightest: Lightest | null): TargetJson | null {
  if (lightest === null || week.target === null) return null;
  const target = coinText(exactNumber(week.target), week.currency);
  if (lightest.kind === "unknown")
    return { target, reached: null, earns: null, proven: false, load: null, chosen: [] };
  const { chosen } = lightest;
  const counted = countWeek(week, chosen);
  return {
    target,
    reached: lightest.kind === "enough",
    earns: coinText(exactNumber(counted.earns), week.currency),
    proven: lightest.kind === "enough" && lightest.proven,
    load: loadOf(counted),
    chosen: chosen.map((at) => candidateAt(week, at).id),
  };
}
