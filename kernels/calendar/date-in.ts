import { Temporal } from "temporal-polyfill";

/** The day of an ISO instant by the clock of a zone, "2026-12-01". Throws on an instant or a zone that is none. */
export function dateIn(instant: string, zone: string): string {
  return Temporal.Instant.from(instant).toZonedDateTimeISO(zone).toPlainDate().toString();
}
