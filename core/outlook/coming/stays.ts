import { dateOfDay } from "#kernels/calendar";
import { type Cohort, fitBetaGeometric, kaplanMeier, survivalOf, type Watched } from "#kernels/survival";
import type { Period, PersonSeen, Stays, StaysFitted } from "./coming-types.ts";
import type { RecordsRead } from "./read-records.ts";
import { FOUR_OF_FIVE } from "./four-of-five.ts";

export type StaysQuestion = {
  readonly period: Period;
  /** not seen for so many periods is gone; from 1 */
  readonly goneAfter: number;
  /** only who was first seen on this day or later: those before may have come long before the records begin */
  readonly newSince?: number;
};

/** How long one person is known to have stayed, in periods. */
export type Stay = Watched & { readonly person: PersonSeen };

/**
 * The stays that can be told. Whether somebody is gone shows only after `goneAfter` periods without a visit, so
 * everybody is looked at as of the last period for which that is known: who was seen then or later had not
 * stopped by then, and who began after it tells nothing yet. Looking at the gone up to the end instead would
 * count the lately gone as watched for less and never as gone.
 */
export function staysOf(read: RecordsRead, question: StaysQuestion): readonly Stay[] {
  const { goneAfter, newSince = Number.NEGATIVE_INFINITY } = question;
  const periodOf = periodsOf(read, question.period);
  const known = lastPeriod(read, question.period) - goneAfter + 1;
  return read.people.flatMap((person) => {
    const first = person.days[0] ?? read.until;
    const watched = known - periodOf(first);
    if (first < newSince || watched < 1) return [];
    const last = periodOf(person.days.at(-1) ?? first);
    return [
      last >= known
        ? { person, time: watched, ended: false }
        : { person, time: last + 1 - periodOf(first), ended: true },
    ];
  });
}

/** The curve of those who stay, with the band that holds it four times of five. */
export function curveOf(stays: readonly Stay[], { period, goneAfter }: StaysQuestion): Stays {
  const steps = kaplanMeier(stays, FOUR_OF_FIVE);
  return {
    period,
    goneAfter,
    people: stays.length,
    stopped: stays.filter((it) => it.ended).length,
    curve: steps.map((it) => ({
      period: it.time,
      value: it.survival,
      low: it.low,
      high: it.high,
      atRisk: it.atRisk,
      stopped: it.ended,
    })),
  };
}

/** The beta-geometric that fits the stays, with the share it expects for each of the periods ahead. */
export function fitStays(
  read: RecordsRead,
  stays: readonly Stay[],
  question: StaysQuestion,
  periods: number,
): StaysFitted {
  const fitted = fitBetaGeometric(cohortsOf(read, stays, question));
  return { ...curveOf(stays, question), fitted, expected: survivalOf(fitted.parameters, periods).slice(1) };
}

/** Those who could be watched for as long as each other, together. */
function cohortsOf(read: RecordsRead, stays: readonly Stay[], question: StaysQuestion): readonly Cohort[] {
  const periodOf = periodsOf(read, question.period);
  const known = lastPeriod(read, question.period) - question.goneAfter + 1;
  const cohorts = new Map<number, { ended: number[]; still: number }>();
  for (const { person, time, ended } of stays) {
    const watched = known - periodOf(person.days[0] ?? 0);
    const cohort = cohorts.get(watched) ?? { ended: Array.from({ length: watched }, () => 0), still: 0 };
    cohorts.set(watched, cohort);
    if (ended) cohort.ended[time - 1] = (cohort.ended[time - 1] ?? 0) + 1;
    else cohort.still += 1;
  }
  return [...cohorts.values()];
}

function periodsOf({ time }: RecordsRead, period: Period): (day: number) => number {
  switch (period) {
    case "week":
      return time.weekOf;
    case "month":
      return (day) => Number(dateOfDay(day).slice(0, 4)) * 12 + Number(dateOfDay(day).slice(5, 7)) - 1;
    case "year":
      return (day) => Number(dateOfDay(day).slice(0, 4));
  }
}

/** The last period that is over, or in which somebody came: of one that has just begun nothing can be told. */
function lastPeriod(read: RecordsRead, period: Period): number {
  if (period === "week") return read.lastWeek;
  const periodOf = periodsOf(read, period);
  const current = periodOf(read.until);
  const over = periodOf(read.until + 1) > current;
  const seen = read.people.some(({ days }) => periodOf(days.at(-1) ?? 0) === current);
  return over || seen ? current : current - 1;
}
