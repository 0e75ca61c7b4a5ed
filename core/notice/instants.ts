import { isZone } from "#kernels/calendar";
import { Temporal } from "temporal-polyfill";

const WRITTEN = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}(\.\d{1,9})?Z$/;

/** "2026-11-25T18:58:00Z" as an instant. Throws on any other writing: the record keeps one form only. */
export function instantOf(text: string): Temporal.Instant {
  if (!WRITTEN.test(text)) throw new RangeError(`not an instant in UTC: ${text}`);
  return Temporal.Instant.from(text);
}

/** What the clock on the wall of the hall shows then. */
export function inZone(instant: string, zone: string): Temporal.ZonedDateTime {
  if (!isZone(zone)) throw new RangeError(`not a time zone: ${zone}`);
  return instantOf(instant).toZonedDateTimeISO(zone);
}

export function written(moment: Temporal.ZonedDateTime): string {
  return moment.toInstant().toString();
}

/** Seconds from one instant until another; below nought when it came before. */
export function secondsBetween(from: string, until: string): number {
  return (instantOf(until).epochMilliseconds - instantOf(from).epochMilliseconds) / 1000;
}
