import { dateIn, readPlainDate, readPlainTime, zonedStart } from "#kernels/calendar";
import { momentWords } from "#core/notice";
import type { Writer } from "#core/words";
import { Temporal } from "temporal-polyfill";

const HOUR = 3_600_000;
/** A register is still the one of tonight for so long after the end, for what is written down on the way home. */
const AFTER = 3 * HOUR;

type Timed = { readonly starts: string; readonly minutes: number };

/** Whether a session is going on, or is over so lately that its register is still at hand. */
export function isAtHand({ starts, minutes }: Timed, now: string): boolean {
  const begins = Date.parse(starts);
  return begins - HOUR <= Date.parse(now) && Date.parse(now) <= begins + minutes * 60_000 + AFTER;
}

/** "18:30", by the clock of the hall. */
export function clockOf(starts: string, zone: string, writer: Writer): string {
  const time = Temporal.Instant.from(starts).toZonedDateTimeISO(zone).toPlainTime();
  return writer.time(time.toString({ smallestUnit: "minute" }));
}

/** The day and the time of an instant by the clock of the hall, as the fields of a form have them. */
export function dayClock(instant: string, zone: string): { readonly day: string; readonly clock: string } {
  const there = Temporal.Instant.from(instant).toZonedDateTimeISO(zone);
  return {
    day: there.toPlainDate().toString(),
    clock: there.toPlainTime().toString({ smallestUnit: "minute" }),
  };
}

/** "at 18:30" on the day itself, "on Tuesday 1 December 2026 at 18:30" on any other. */
export function whenWords(starts: string, zone: string, now: string, writer: Writer): string {
  if (dateIn(starts, zone) === dateIn(now, zone)) return `at ${clockOf(starts, zone, writer)}`;
  return `on ${momentWords(starts, zone, writer)}`;
}

/**
 * The instant at which a class begins that meets on a date at a time of day in a zone, "2026-12-01T18:30:00Z"; null
 * where the date, the time or the zone cannot be read.
 */
export function startsAt(date: string, time: string, zone: string): string | null {
  const day = readPlainDate(date);
  const clock = readPlainTime(time);
  if (day === undefined || clock === undefined) return null;
  try {
    return zonedStart(day, clock, zone).toInstant().toString();
  } catch {
    return null;
  }
}
