import { coinText } from "#core/price";
import { exactNumber } from "#core/words";
import type { MoneyYear, PathQuestion } from "./money-types.ts";
import type { DropDate, PathFound } from "./path/path-found.ts";

export type DropJson = {
  /** the first day without it */
  readonly from: string;
  /** the last day on which notice can be given for that */
  readonly noticeBy: string;
};

export type PathJson = {
  readonly need: string;
  readonly level: number;
  readonly freedHours: number;
  readonly classes: readonly {
    readonly id: string;
    readonly name: string;
    /** by itself, all the others kept; null for not within the months asked */
    readonly alone: DropJson | null;
    /** in the order that frees the most hours; null where it stays */
    readonly planned: DropJson | null;
  }[];
  readonly months: readonly {
    readonly month: string;
    /** ids of the classes that may go and are still kept */
    readonly kept: readonly string[];
    /** income a month over the window that begins there: eight chances of ten lie between low and high */
    readonly low: string;
    readonly middle: string;
    readonly high: string;
    /** that it reaches the need, between 0 and 1: by the plan, with all kept, with none */
    readonly chance: number;
    readonly chanceWithAll: number;
    readonly chanceWithNone: number;
  }[];
};

// eight chances of ten of a normal curve
const EIGHT_OF_TEN = 1.2815515655446004;

export function pathJson(
  year: MoneyYear,
  { need, level, mayDrop }: PathQuestion,
  found: PathFound,
): PathJson {
  const text = (coins: number) => coinText(exactNumber(Math.round(coins)), year.currency);
  const idOf = (one: number) => year.work[mayDrop[one]?.work ?? -1]?.id ?? "";
  return {
    need: text(need),
    level,
    freedHours: Math.round(found.freedHours * 10) / 10,
    classes: found.classes.map(({ alone, planned }, one) => ({
      id: idOf(one),
      name: year.work[mayDrop[one]?.work ?? -1]?.name ?? "",
      alone: dropJson(alone),
      planned: dropJson(planned),
    })),
    months: found.months.map((it) => ({
      month: it.month,
      kept: it.kept.map(idOf),
      low: text(it.mean - EIGHT_OF_TEN * it.deviation),
      middle: text(it.mean),
      high: text(it.mean + EIGHT_OF_TEN * it.deviation),
      chance: rounded(it.chance),
      chanceWithAll: rounded(it.chanceWithAll),
      chanceWithNone: rounded(it.chanceWithNone),
    })),
  };
}

/** What lies behind the fourth place is known to nobody. */
function rounded(chance: number): number {
  return Number(chance.toFixed(4));
}

function dropJson(drop: DropDate | null): DropJson | null {
  return drop === null ? null : { from: drop.from, noticeBy: drop.noticeBy };
}
