import { type AmountWriter, clockText, coinText, type PartLine } from "#core/price";
import { exactNumber } from "#core/words";
import { type CountedWeek, countWeek, type DayWalk } from "./check-week.ts";
import type { ChosenWeek } from "./choose-week.ts";
import { guessedWays, headSentences } from "./week-sentences.ts";
import type { Week } from "./week-types.ts";
import { weekWorking } from "./week-working.ts";
import { candidateAt } from "./week-words.ts";

/** A week by itself: what it leaves and how sure that is, its load, its days and its sum. Amounts as in WeekJson. */
export type WeekHead = {
  /** the answer first, then wishes, proof and ties; the days are not among them */
  readonly sentences: readonly string[];
  readonly earns: string;
  readonly wishes: string;
  readonly leaves: string;
  readonly bound: string;
  readonly proven: boolean;
  readonly load: LoadJson;
  readonly days: readonly DayJson[];
  readonly chosen: readonly string[];
  readonly ties: readonly (readonly string[])[];
  readonly nextBestLeavesLess: string | null;
  readonly guessedWays: readonly string[];
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
    readonly accessFrom: string;
    readonly start: string;
    readonly end: string;
    readonly accessUntil: string;
    readonly fromHome: boolean;
    /** between the one before it and this; null where she goes straight on */
    readonly atHome: { readonly from: string; readonly until: string } | null;
    readonly travelMinutes: number;
    readonly km: number;
    readonly waitingMinutes: number;
  }[];
};

export function weekHead(week: Week, best: ChosenWeek, write: AmountWriter): WeekHead {
  const counted = countWeek(week, best.chosen);
  const text = (coins: number) => coinText(exactNumber(coins), week.currency);
  const ids = (chosen: readonly number[]) => chosen.map((at) => candidateAt(week, at).id);
  return {
    sentences: headSentences(week, { best, counted }, write),
    earns: text(counted.earns),
    wishes: text(counted.wishes),
    leaves: text(best.value),
    bound: text(best.bound),
    proven: best.bound === best.value,
    load: loadOf(counted),
    days: counted.walks.map((walk) => dayJson(week, walk)),
    chosen: ids(best.chosen),
    ties: best.ties.map(ids),
    nextBestLeavesLess: best.margin === null ? null : text(best.margin),
    guessedWays: guessedWays(week),
    working: weekWorking(week, { best, counted }),
  };
}

export function loadOf({ classes, days, evenings, minutes }: CountedWeek): LoadJson {
  return { classes, days, evenings, doorToDoorMinutes: minutes };
}

function dayJson(week: Week, { weekday, leaves, home, stops }: DayWalk): DayJson {
  return {
    weekday,
    leaves: clockText(leaves),
    home: clockText(home),
    stops: stops.map(({ candidate, fromHome, atHome, travel, km, waiting }) => {
      const one = candidateAt(week, candidate);
      return {
        id: one.id,
        name: one.name,
        place: week.places[one.place]?.id ?? "",
        accessFrom: clockText(one.accessFrom),
        start: clockText(one.start),
        end: clockText(one.end),
        accessUntil: clockText(one.accessUntil),
        fromHome,
        atHome: atHome === null ? null : { from: clockText(atHome.from), until: clockText(atHome.until) },
        travelMinutes: travel,
        km,
        waitingMinutes: waiting,
      };
    }),
  };
}
