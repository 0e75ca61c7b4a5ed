import {
  bad,
  type CurrencyCode,
  good,
  type Problem,
  problem,
  type Result,
  readAmount,
  readDate,
  readMinutes,
} from "#core/words";
import { backwardHours } from "#core/price";
import { readPlainTime } from "#kernels/calendar";
import type { HallForClass, Planning } from "./planning-document.ts";
import { readWeekday } from "./read-class-fields.ts";

/**
 * What is planned of the halls that a class could be in. Problems: those of minutes, amounts, dates and weekdays,
 * "time-unreadable", "free-hours-backwards", "span-backwards", "closure-backwards".
 */
export function readPlanningHalls(halls: Planning["halls"], currency: CurrencyCode): Result<null> {
  const problems = Object.entries(halls ?? {}).flatMap(([id, hall]) =>
    hallProblems(hall, currency, `planning.halls.${id}`),
  );
  return problems.length > 0 ? bad(...problems) : good(null);
}

function hallProblems(hall: HallForClass, currency: CurrencyCode, place: string): readonly Problem[] {
  const { travelMinutes = 0, travelCost = "0", free = [], terms = [], closures = [] } = hall;
  return [
    ...told(readMinutes(travelMinutes, `${place}.travelMinutes`)),
    ...told(readAmount(travelCost, currency, `${place}.travelCost`)),
    ...free.flatMap((it, index) => freeProblems(it, `${place}.free[${index}]`)),
    ...terms.flatMap((it, index) => termProblems(it, `${place}.terms[${index}]`)),
    ...closures.flatMap((it, index) => closureProblems(it, `${place}.closures[${index}]`)),
  ];
}

type Free = NonNullable<HallForClass["free"]>[number];
type Term = NonNullable<HallForClass["terms"]>[number];
type Closed = NonNullable<HallForClass["closures"]>[number];

function freeProblems({ weekday, from, until }: Free, place: string): readonly Problem[] {
  const times = [
    ...told(readWeekday(weekday)).map((it) => ({ ...it, place: `${place}.weekday` })),
    ...clockProblems(from, `${place}.from`),
    ...clockProblems(until, `${place}.until`),
  ];
  // written with two digits each, so that the later time is the greater text
  if (times.length > 0 || from < until) return times;
  return [backwardHours(from, until, place)];
}

function clockProblems(time: string, place: string): readonly Problem[] {
  if (readPlainTime(time) !== undefined) return [];
  const says = `“${time.slice(0, 40)}” is not a time of day.`;
  return [problem("time-unreadable", place, says, "Write hours and minutes like 18:30.")];
}

function termProblems({ from, until }: Term, place: string): readonly Problem[] {
  const dates = [...told(readDate(from, `${place}.from`)), ...told(readDate(until, `${place}.until`))];
  if (dates.length > 0 || from <= until) return dates;
  const says = `It can be had until ${until}, before it can be had from ${from}.`;
  return [problem("span-backwards", place, says, "Change one of the two dates.")];
}

function closureProblems({ from, until }: Closed, place: string): readonly Problem[] {
  const dates = [...told(readDate(from, `${place}.from`)), ...told(readDate(until, `${place}.until`))];
  if (dates.length > 0 || from <= until) return dates;
  const says = `It is closed until ${until}, before it is closed from ${from}.`;
  return [problem("closure-backwards", place, says, "Change one of the two dates.")];
}

function told(read: Result<unknown>): readonly Problem[] {
  return read.ok ? [] : read.problems;
}
