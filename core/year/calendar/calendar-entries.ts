import type { Temporal } from "temporal-polyfill";
import { classYearDates } from "../class-year-dates.ts";
import type { Session, Year, YearClass } from "../year-types.ts";

/**
 * One session as her calendar has it: { uid: "20270112-tuesday-evening@marlsford", sequence: 0, … }. Nothing of her
 * time off, of why a date is lost, of people or of health is in it.
 */
export type CalendarEntry = {
  /** of the class and the day on which it would have been: the same wherever it moves */
  readonly uid: string;
  /** grows with each move and each edition, so that a calendar takes the newest */
  readonly sequence: number;
  readonly begins: Temporal.Instant;
  readonly ends: Temporal.Instant;
  readonly title: string;
  readonly place: string;
  readonly cancelled: boolean;
};

// a session is moved less often than this between two editions
const MOVES_OF_AN_EDITION = 1000;

/**
 * The sessions of the year as entries of a calendar, in order; those that she cancelled herself are there as
 * cancelled, so that a calendar that has them lets them go. `practice` makes the ids her own.
 */
export function calendarEntries(year: Year, practice: string): readonly CalendarEntry[] {
  return year.classes.flatMap((one) => {
    const { sessions, lost } = classYearDates(one, year);
    const gone = lost.filter(({ reasons }) => reasons.some(({ kind }) => kind === "cancelled"));
    return [
      ...sessions.map((it) => entryOf(it, year, practice)),
      ...gone.map(({ date }) => cancelledEntry(one, date, year, practice)),
    ];
  });
}

function entryOf(session: Session, year: Year, practice: string): CalendarEntry {
  const { class: one, original, begins, ends, times } = session;
  return {
    uid: uidOf(one, original, practice),
    sequence: year.edition * MOVES_OF_AN_EDITION + times,
    begins: begins.toInstant(),
    ends: ends.toInstant(),
    title: one.name,
    place: one.hall.name,
    cancelled: false,
  };
}

function cancelledEntry(
  one: YearClass,
  date: Temporal.PlainDate,
  year: Year,
  practice: string,
): CalendarEntry {
  const begins = date.toPlainDateTime(one.start).toZonedDateTime(one.hall.zone);
  return {
    uid: uidOf(one, date, practice),
    sequence: year.edition * MOVES_OF_AN_EDITION + 1,
    begins: begins.toInstant(),
    ends: begins.add({ minutes: one.minutes.teach }).toInstant(),
    title: one.name,
    place: one.hall.name,
    cancelled: true,
  };
}

function uidOf({ id }: YearClass, date: Temporal.PlainDate, practice: string): string {
  const day = date.toString().replaceAll("-", "");
  return `${day}-${plain(id)}@${plain(practice)}`;
}

/** An id may be anything in a document; in a calendar it is letters, digits and hyphens. */
function plain(id: string): string {
  return id.replace(/[^A-Za-z0-9.-]/g, (sign) => `.${(sign.codePointAt(0) ?? 0).toString(16)}.`);
}
