import { type AmountWriter, clockText, coinText, type PartLine } from "#core/price";
import { exactNumber } from "#core/words";
import type { Change, ChosenLine, RejectedLine } from "./candidate-lines.ts";
import type { DayWalk } from "./check-week.ts";
import { countWeek } from "./check-week.ts";
import type { TradePoint } from "./trade-off.ts";
import type { WeekFound } from "./week-found.ts";
import { guessedWays, weekSentences } from "./week-sentences.ts";
import type { Week } from "./week-types.ts";
import { weekWorking } from "./week-working.ts";
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

export type LoadJson = {
  readonly classes: number;
  readonly days: number;
  readonly evenings: number;
  readonly doorToDoorMinutes: number;
};

export type DayJson = {
  readonly weekday: number;
  readonly leaves: string;
  readonly home: string;
  readonly stops: readonly {
    readonly id: string;
    readonly name: string;
    readonly place: string;
    readonly start: string;
    readonly end: string;
    readonly fromHome: boolean;
    readonly travelMinutes: number;
    readonly km: number;
    readonly waitingMinutes: number;
  }[];
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
  const { best, counted } = found;
  const text = (coins: number) => coinText(exactNumber(coins), week.currency);
  const ids = (chosen: readonly number[]) => chosen.map((at) => candidateAt(week, at).id);
  const point = ({ count, leaves, bound, chosen }: TradePoint): PointJson => ({
    count,
    leaves: text(leaves),
    proven: leaves === bound,
    chosen: ids(chosen),
  });
  return {
    format: "hallful/week-answer@1",
    currency: week.currency,
    sentences: weekSentences(week, found, write),
    earns: text(counted.earns),
    wishes: text(counted.wishes),
    leaves: text(best.value),
    bound: text(best.bound),
    proven: best.bound === best.value,
    load: loadOf(week, best.chosen),
    days: counted.walks.map((walk) => dayJson(week, walk)),
    chosen: found.chosen.map((line) => chosenJson(week, line)),
    rejected: found.rejected.map((line) => rejectedJson(week, line)),
    ties: best.ties.map(ids),
    nextBestLeavesLess: best.margin === null ? null : text(best.margin),
    curve: { classes: found.byClasses.map(point), evenings: found.byEvenings.map(point) },
    target: targetJson(week, found),
    guesses: [...week.guesses, ...guessedWays(week)],
    working: weekWorking(week, found),
  };
}

function loadOf(week: Week, chosen: readonly number[]): LoadJson {
  const { classes, days, evenings, minutes } = countWeek(week, chosen);
  return { classes, days, evenings, doorToDoorMinutes: minutes };
}

function dayJson(week: Week, { weekday, leaves, home, stops }: DayWalk): DayJson {
  return {
    weekday,
    leaves: clockText(leaves),
    home: clockText(home),
    stops: stops.map(({ candidate, fromHome, travel, km, waiting }) => {
      const one = candidateAt(week, candidate);
      return {
        id: one.id,
        name: one.name,
        place: week.places[one.place]?.id ?? "",
        start: clockText(one.start),
        end: clockText(one.end),
        fromHome,
        travelMinutes: travel,
        km,
        waitingMinutes: waiting,
      };
    }),
  };
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

function chosenJson(week: Week, line: ChosenLine): ChosenJson {
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

function rejectedJson(week: Week, line: RejectedLine): RejectedJson {
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

function targetJson(week: Week, { lightest }: WeekFound): TargetJson | null {
  if (lightest === null || week.target === null) return null;
  const target = coinText(exactNumber(week.target), week.currency);
  if (lightest.kind === "unknown")
    return { target, reached: null, earns: null, proven: false, load: null, chosen: [] };
  const { chosen } = lightest;
  return {
    target,
    reached: lightest.kind === "enough",
    earns: coinText(exactNumber(countWeek(week, chosen).earns), week.currency),
    proven: lightest.kind === "enough" && lightest.proven,
    load: loadOf(week, chosen),
    chosen: chosen.map((at) => candidateAt(week, at).id),
  };
}
