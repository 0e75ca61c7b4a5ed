import { type DateSpan, ruleStarts } from "#kernels/calendar";
import { Temporal } from "temporal-polyfill";
import type { CalendarEvent, CalendarTime } from "./calendar-event.ts";

export type EventStarts = {
  readonly starts: readonly Temporal.ZonedDateTime[];
  readonly lasts: Temporal.Duration;
};

/**
 * The moments at which an event begins so that some of it lies in the span, in its own zone, or why that cannot be
 * told. Whole days and times without a zone are by the clocks of the hall.
 */
export function eventStarts(event: CalendarEvent, span: DateSpan, zone: string): EventStarts | string {
  const first = momentOfTime(event.start, zone);
  const lasts = lengthOf(event, first, zone);
  if (typeof lasts === "string") return lasts;
  const repeated = event.rule === null ? [] : repeatedStarts(event.rule, first, lasts, span, zone);
  if (typeof repeated === "string") return repeated;
  const also = event.also.map((it) => momentOfTime(it, zone));
  // the first is one of them, whatever the rule says (RFC 5545, 3.8.5.3)
  const all = new Map([first, ...repeated, ...also].map((it) => [it.epochMilliseconds, it]));
  for (const it of event.without) withoutOf(all, it, zone);
  return { starts: [...all.values()], lasts };
}

/** A moment of a calendar file; a day begins at midnight of the hall. */
export function momentOfTime(time: CalendarTime, zone: string): Temporal.ZonedDateTime {
  switch (time.kind) {
    case "day":
      return time.date.toZonedDateTime(zone);
    case "utc":
      return time.at.toZonedDateTimeISO("UTC");
    case "zoned":
      return time.wall.toZonedDateTime(time.zone);
    case "floating":
      return time.wall.toZonedDateTime(zone);
  }
}

function lengthOf(
  event: CalendarEvent,
  first: Temporal.ZonedDateTime,
  zone: string,
): Temporal.Duration | string {
  if (event.duration !== null) {
    const lasts = durationOf(event.duration);
    return lasts ?? `it lasts “${event.duration.slice(0, 30)}”, which is no length of time`;
  }
  if (event.end === null) return Temporal.Duration.from({ days: event.start.kind === "day" ? 1 : 0 });
  const end = momentOfTime(event.end, zone);
  if (Temporal.ZonedDateTime.compare(end, first) < 0) return "it ends before it begins";
  return first.until(end.withTimeZone(first.timeZoneId), {
    largestUnit: event.start.kind === "day" ? "day" : "hour",
  });
}

function durationOf(text: string): Temporal.Duration | undefined {
  try {
    const read = Temporal.Duration.from(text);
    return read.sign < 0 ? undefined : read;
  } catch {
    return undefined;
  }
}

function repeatedStarts(
  rule: string,
  first: Temporal.ZonedDateTime,
  lasts: Temporal.Duration,
  span: DateSpan,
  zone: string,
): readonly Temporal.ZonedDateTime[] | string {
  const from = span.from.toZonedDateTime(zone).subtract(lasts).withTimeZone(first.timeZoneId);
  const end = span.until.add({ days: 1 }).toZonedDateTime(zone).withTimeZone(first.timeZoneId);
  const read = ruleStarts({ rule, start: first }, from, end);
  if (read.kind === "starts") return read.starts;
  return read.kind === "too many"
    ? "it repeats too often to be counted"
    : `its rule “${rule.slice(0, 60)}” cannot be read`;
}

/** A day taken out of a series of times takes whatever begins on it; a time takes that one. */
function withoutOf(all: Map<number, Temporal.ZonedDateTime>, time: CalendarTime, zone: string): void {
  if (time.kind !== "day") {
    all.delete(momentOfTime(time, zone).epochMilliseconds);
    return;
  }
  for (const [key, it] of all) if (it.toPlainDate().equals(time.date)) all.delete(key);
}
