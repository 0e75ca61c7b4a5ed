import { spanCovering } from "#kernels/calendar";
import { Temporal } from "temporal-polyfill";
import { wallClock } from "./date-text.ts";
import type { DaysOff } from "./lists/day-list-types.ts";
import type { Booking, Reason, ReasonKind, Session, Year } from "./year-types.ts";

/** Everything that takes a session from its date, the weightiest first; none when it can be. */
export function reasonsAgainst(session: Session, year: Year): readonly Reason[] {
  const { class: one, date } = session;
  return [
    ...(one.onPublicHolidays ? [] : holidayReasons(year, date)),
    ...spanReasons("time off", year.timeOff, date),
    ...spanReasons("class closed", one.closed, date),
    ...spanReasons("hall closed", one.hall.closed, date),
    ...electionReasons(session, year),
    ...bookingsAgainst(session).map((it) => ({ kind: "hall booked" as const, why: bookingWords(it) })),
    ...(one.inSchoolHolidays ? [] : spanReasons("school holiday", year.school, date)),
  ];
}

/** What others have in the hall while she would be in it, from coming to leaving. Touching is fine. */
export function bookingsAgainst({ class: one, access, leaves }: Session): readonly Booking[] {
  return one.hall.booked.filter(
    ({ from, end }) =>
      Temporal.ZonedDateTime.compare(from, leaves) < 0 && Temporal.ZonedDateTime.compare(access, end) < 0,
  );
}

function holidayReasons({ holidays }: Year, date: Temporal.PlainDate): readonly Reason[] {
  return holidays
    .filter((it) => it.date.equals(date))
    .map(({ name, standsFor }) => ({
      kind: "public holiday" as const,
      why: standsFor === undefined ? name : `${name} (substitute day)`,
    }));
}

function spanReasons(
  kind: ReasonKind,
  spans: readonly DaysOff[],
  date: Temporal.PlainDate,
): readonly Reason[] {
  const found = spanCovering(spans, date);
  return found === undefined ? [] : [{ kind, why: found.why }];
}

function electionReasons({ class: one, date }: Session, { elections }: Year): readonly Reason[] {
  if (!one.hall.polling || !elections.some((it) => it.equals(date))) return [];
  return [{ kind: "election", why: "election, people vote in the hall" }];
}

function bookingWords({ title, from, end, wholeDays }: Booking): string {
  if (wholeDays) return `${title}, all day`;
  return `${title}, ${wallClock(from)} to ${wallClock(end)}`;
}
