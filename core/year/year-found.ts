import { isoWeek } from "#kernels/calendar";
import { Temporal } from "temporal-polyfill";
import { classYearDates, idleChanges } from "./class-year-dates.ts";
import { reasonsAgainst } from "./reasons-against.ts";
import type { Change, ClassYearDates, Reason, Session, Year } from "./year-types.ts";

/** Two sessions of hers at one time, counted from having to be there to leaving. */
export type OwnClash = { readonly first: Session; readonly second: Session };

/** A week from Monday to Sunday, as far as it lies in the year; "2026-W53". */
export type YearWeek = {
  readonly week: string;
  readonly from: Temporal.PlainDate;
  readonly sessions: number;
};

export type YearFound = {
  readonly classes: readonly ClassYearDates[];
  readonly weeks: readonly YearWeek[];
  readonly clashes: readonly OwnClash[];
  /** sessions that she moved or added to a day on which something is against them */
  readonly against: readonly { readonly session: Session; readonly reasons: readonly Reason[] }[];
  readonly idle: readonly Change[];
};

/** The sessions of the year, its weeks, and what is odd about them. */
export function yearFound(year: Year): YearFound {
  const classes = year.classes.map((one) => classYearDates(one, year));
  const sessions = classes.flatMap((it) => it.sessions);
  return {
    classes,
    weeks: weeksOf(year, sessions),
    clashes: ownClashes(sessions),
    against: sessions
      .filter(({ change }) => change !== null)
      .map((session) => ({ session, reasons: reasonsAgainst(session, year) }))
      .filter(({ reasons }) => reasons.length > 0),
    idle: idleChanges(year),
  };
}

function weeksOf({ span }: Year, sessions: readonly Session[]): readonly YearWeek[] {
  const counts = new Map<string, number>();
  for (const { date } of sessions) counts.set(isoWeek(date), (counts.get(isoWeek(date)) ?? 0) + 1);
  const weeks: YearWeek[] = [];
  let from = span.from;
  while (Temporal.PlainDate.compare(from, span.until) <= 0) {
    const week = isoWeek(from);
    weeks.push({ week, from, sessions: counts.get(week) ?? 0 });
    from = from.add({ days: 8 - from.dayOfWeek });
  }
  return weeks;
}

/** In order of time, each is held against those that begin before she has left it. */
function ownClashes(sessions: readonly Session[]): readonly OwnClash[] {
  const sorted = sessions.toSorted((a, b) => Temporal.ZonedDateTime.compare(a.access, b.access));
  return sorted.flatMap((first, at) => {
    const clashes: OwnClash[] = [];
    for (const second of sorted.slice(at + 1)) {
      if (Temporal.ZonedDateTime.compare(second.access, first.leaves) >= 0) break;
      clashes.push({ first, second });
    }
    return clashes;
  });
}
