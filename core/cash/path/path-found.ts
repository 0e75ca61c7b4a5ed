import { Temporal } from "temporal-polyfill";
import type { MoneyYear, PathQuestion } from "../money-types.ts";
import { planFaults } from "./check-plan.ts";
import { dropPlan } from "./drop-plan.ts";
import { isKept, pathChance, pathIncome } from "./path-chance.ts";
import { type PathMonth, pathMonths } from "./path-months.ts";

/** When a class could go: the first day without it, and the last on which notice can be given for that. */
export type DropDate = { readonly month: number; readonly from: string; readonly noticeBy: string };

export type PathClass = {
  readonly work: number;
  /** by itself, all the others kept; null for not within the months asked */
  readonly alone: DropDate | null;
  /** in the plan that frees the most hours; null where it stays */
  readonly planned: DropDate | null;
};

export type PathMonthFound = {
  readonly month: string;
  /** positions in the list of classes that may go */
  readonly kept: readonly number[];
  readonly mean: number;
  /** what is reached with the chance asked is read off the chance itself */
  readonly deviation: number;
  readonly chance: number;
  readonly chanceWithAll: number;
  readonly chanceWithNone: number;
};

export type PathFound = {
  readonly months: readonly PathMonthFound[];
  readonly classes: readonly PathClass[];
  readonly freedHours: number;
};

/** The path to full time. Throws where the checker finds a fault in the plan: that would be ours. */
export function pathFound(year: MoneyYear, question: PathQuestion): PathFound {
  const months = pathMonths(year, question);
  const earliest = question.mayDrop.map(({ noticeWeeks }) => firstWithNotice(months, noticeWeeks));
  const { kept, freedHours } = dropPlan(months, question, earliest);
  const faults = planFaults(months, question, earliest, kept);
  if (faults.length > 0) throw new RangeError(`a plan with faults: ${faults.join("; ")}`);
  const all = 2 ** question.mayDrop.length - 1;
  const chance = (at: number, set: number) =>
    pathChance(pathIncome(months, at, set, question), question.need);
  return {
    freedHours,
    months: months.map(({ month }, at) => ({
      month,
      kept: question.mayDrop.flatMap((_, one) => (isKept(kept[at] ?? all, one) ? [one] : [])),
      ...pathIncome(months, at, kept[at] ?? all, question),
      chance: chance(at, kept[at] ?? all),
      chanceWithAll: chance(at, all),
      chanceWithNone: chance(at, 0),
    })),
    classes: question.mayDrop.map((it, one) => ({
      work: it.work,
      alone: dateOf(months, it.noticeWeeks, firstAlone(months, question, one, earliest[one] ?? 0)),
      planned: dateOf(months, it.noticeWeeks, firstWithout(kept, one)),
    })),
  };
}

/** The first month that begins no sooner than the notice, given on the first day of all, runs out. */
function firstWithNotice(months: readonly PathMonth[], weeks: number): number {
  const [start] = months;
  if (start === undefined) return 0;
  const ends = Temporal.PlainDate.from(start.first).add({ weeks }).toString();
  const found = months.findIndex(({ first }) => first >= ends);
  return found < 0 ? months.length : found;
}

/** From when on all the others carry every month: after the last month in which they do not. */
function firstAlone(
  months: readonly PathMonth[],
  question: PathQuestion,
  one: number,
  earliest: number,
): number | null {
  const others = (2 ** question.mayDrop.length - 1) & ~(1 << one);
  const thin = months.findLastIndex(
    (_, at) => pathChance(pathIncome(months, at, others, question), question.need) < question.level,
  );
  const first = Math.max(thin + 1, earliest);
  return first < months.length ? first : null;
}

function firstWithout(kept: readonly number[], one: number): number | null {
  const found = kept.findIndex((set) => !isKept(set, one));
  return found < 0 ? null : found;
}

function dateOf(months: readonly PathMonth[], weeks: number, month: number | null): DropDate | null {
  const first = month === null ? undefined : months[month]?.first;
  if (month === null || first === undefined) return null;
  const noticeBy = Temporal.PlainDate.from(first).subtract({ weeks }).toString();
  return { month, from: first, noticeBy };
}
