import { monthKey } from "#kernels/calendar";
import { wallClock } from "./date-text.ts";
import type { YearFound } from "./year-found.ts";
import { yearNotes } from "./year-notes.ts";
import { yearSentences } from "./year-sentences.ts";
import type { ClassYearDates, Session, Year } from "./year-types.ts";

/** The calendar of a year for other programs: ISO dates, times by the clocks of the hall. */
export type YearCalendarJson = {
  readonly from: string;
  readonly until: string;
  readonly zone: string;
  readonly sentences: readonly string[];
  /** what she should look at before she relies on it */
  readonly notes: readonly string[];
  readonly sessions: number;
  readonly weeks: {
    readonly inYear: number;
    readonly taught: number;
    /** ISO weeks without a session, like 2026-W53 */
    readonly without: readonly string[];
  };
  /** sessions that she may lose by being ill: a guess, taken off nothing else */
  readonly sick: { readonly share: number; readonly sessions: number; readonly guess: true };
  readonly classes: readonly ClassYearJson[];
  readonly holidays: readonly HolidayJson[];
  /** sessions of hers at one time */
  readonly clashes: readonly { readonly first: SessionNameJson; readonly second: SessionNameJson }[];
  readonly notUnderstood: readonly {
    readonly place: string;
    readonly line: number;
    readonly text: string;
    readonly says: string;
  }[];
};

export type SessionNameJson = { readonly class: string; readonly date: string };

export type ClassYearJson = {
  readonly id: string;
  readonly name: string;
  readonly hall: string;
  readonly hallName: string;
  readonly zone: string;
  readonly sessions: number;
  /** weeks in which it is */
  readonly weeks: number;
  readonly dates: readonly SessionJson[];
  readonly lost: readonly {
    readonly date: string;
    /** the weightiest first */
    readonly reasons: readonly { readonly kind: string; readonly why: string }[];
  }[];
  readonly months: readonly { readonly month: string; readonly sessions: number }[];
};

export type SessionJson = {
  readonly date: string;
  readonly start: string;
  readonly end: string;
  /** the day on which it would have been, where it was moved */
  readonly movedFrom: string | null;
  /** added by her, or held although something is against it */
  readonly extra: boolean;
};

export type HolidayJson = {
  readonly date: string;
  readonly name: string;
  readonly standsFor: string | null;
  readonly movedTo: string | null;
};

export function yearJson(year: Year, found: YearFound): YearCalendarJson {
  const sessions = found.classes.reduce((sum, it) => sum + it.sessions.length, 0);
  return {
    from: year.span.from.toString(),
    until: year.span.until.toString(),
    zone: year.zone,
    sentences: yearSentences(year, found),
    notes: yearNotes(year, found),
    sessions,
    weeks: {
      inYear: found.weeks.length,
      taught: found.weeks.filter((it) => it.sessions > 0).length,
      without: found.weeks.filter((it) => it.sessions === 0).map(({ week }) => week),
    },
    sick: { share: year.sick, sessions: Math.round(year.sick * sessions * 10) / 10, guess: true },
    classes: found.classes.map((it) => classJson(it, year)),
    holidays: year.holidays.map(({ date, name, standsFor, movedTo }) => ({
      date: date.toString(),
      name,
      standsFor: standsFor?.toString() ?? null,
      movedTo: movedTo?.toString() ?? null,
    })),
    clashes: found.clashes.map(({ first, second }) => ({ first: nameJson(first), second: nameJson(second) })),
    notUnderstood: year.notUnderstood.map(({ place, line, text, says }) => ({ place, line, text, says })),
  };
}

function nameJson({ class: one, date }: Session): SessionNameJson {
  return { class: one.id, date: date.toString() };
}

function classJson({ class: one, sessions, lost }: ClassYearDates, year: Year): ClassYearJson {
  const weeks = new Set(sessions.map(({ date }) => `${date.yearOfWeek ?? 0}-${date.weekOfYear ?? 0}`));
  return {
    id: one.id,
    name: one.name,
    hall: one.hall.id,
    hallName: one.hall.name,
    zone: one.hall.zone,
    sessions: sessions.length,
    weeks: weeks.size,
    dates: sessions.map(sessionJson),
    lost: lost.map(({ date, reasons }) => ({ date: date.toString(), reasons })),
    months: monthsOf(year).map((month) => ({
      month,
      sessions: sessions.filter(({ date }) => monthKey(date) === month).length,
    })),
  };
}

function sessionJson({ date, begins, ends, original, change }: Session): SessionJson {
  return {
    date: date.toString(),
    start: wallClock(begins),
    end: wallClock(ends),
    movedFrom: change === "moved" ? original.toString() : null,
    extra: change === "extra",
  };
}

/** The months that the year touches, each with those in which nothing is: "2026-09" to "2027-08". */
function monthsOf({ span }: Year): readonly string[] {
  const first = span.from.toPlainYearMonth();
  const count = first.until(span.until.toPlainYearMonth(), { largestUnit: "month" }).months + 1;
  return Array.from({ length: count }, (_, at) => first.add({ months: at }).toString());
}
