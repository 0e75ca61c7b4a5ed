import type { DateSpan } from "#kernels/calendar";
import { Temporal } from "temporal-polyfill";
import type { BookedDocument } from "../year-document.ts";
import type { CalendarEvent, CalendarNote } from "./calendar-event.ts";
import { eventStarts, momentOfTime } from "./event-starts.ts";

export type HallBookings = {
  readonly booked: readonly BookedDocument[];
  readonly notes: readonly CalendarNote[];
};

/** More than this is no hall's year: 30 things a day. */
const MOST_BOOKINGS = 10_000;

/**
 * What a hall's calendar has in a span of days, each repeated one for itself, by the clocks of the hall and in order.
 * An event that stands for one of a series takes its place. What was cancelled or takes no time is left out.
 */
export function hallBookings(events: readonly CalendarEvent[], span: DateSpan, zone: string): HallBookings {
  const notes: CalendarNote[] = [];
  const replaced = new Set(
    events.flatMap((it) => (it.stands === null ? [] : [nameOf(it.uid, momentOfTime(it.stands, zone))])),
  );
  const found: Booked[] = [];
  for (const event of events) {
    if (event.free || found.length > MOST_BOOKINGS) continue;
    const read = eventStarts(event, span, zone);
    if (typeof read === "string") {
      notes.push({ line: event.line, says: `${titleOf(event)}: ${read}` });
      continue;
    }
    const { starts, lasts } = read;
    for (const start of starts) {
      if (event.stands === null && replaced.has(nameOf(event.uid, start))) continue;
      const booked = bookedOf(event, start, lasts, zone);
      if (liesIn(booked, span, zone)) found.push(booked);
    }
  }
  if (found.length > MOST_BOOKINGS)
    notes.push({
      line: 0,
      says: `there are more than ${MOST_BOOKINGS} bookings; those after them are left out`,
    });
  const sorted = found
    .slice(0, MOST_BOOKINGS)
    .toSorted((a, b) => Temporal.ZonedDateTime.compare(a.from, b.from) || (a.title < b.title ? -1 : 1));
  return { booked: sorted.map(documentOf), notes };
}

type Booked = {
  readonly title: string;
  readonly from: Temporal.ZonedDateTime;
  readonly end: Temporal.ZonedDateTime;
  readonly days: boolean;
};

function nameOf(uid: string, moment: Temporal.ZonedDateTime): string {
  return `${moment.epochMilliseconds} ${uid}`;
}

function titleOf({ title }: CalendarEvent): string {
  return title.trim() === "" ? "booked" : title.trim().slice(0, 120);
}

/** An event begins at a moment; how long it lasts is counted in days for whole days, else in time that passes. */
function bookedOf(
  event: CalendarEvent,
  start: Temporal.ZonedDateTime,
  lasts: Temporal.Duration,
  zone: string,
): Booked {
  const from = start.withTimeZone(zone);
  return {
    title: titleOf(event),
    from,
    end: start.add(lasts).withTimeZone(zone),
    days: event.start.kind === "day",
  };
}

function liesIn({ from, end }: Booked, span: DateSpan, zone: string): boolean {
  const begin = span.from.toZonedDateTime(zone);
  const after = span.until.add({ days: 1 }).toZonedDateTime(zone);
  return (
    Temporal.ZonedDateTime.compare(from, end) < 0 &&
    Temporal.ZonedDateTime.compare(from, after) < 0 &&
    Temporal.ZonedDateTime.compare(begin, end) < 0
  );
}

function documentOf({ title, from, end, days }: Booked): BookedDocument {
  if (days) {
    return {
      title,
      from: from.toPlainDate().toString(),
      until: end.toPlainDate().subtract({ days: 1 }).toString(),
    };
  }
  return { title, from: wallText(from), until: wallText(end) };
}

function wallText(moment: Temporal.ZonedDateTime): string {
  return moment.toPlainDateTime().toString({ smallestUnit: "minute" });
}
