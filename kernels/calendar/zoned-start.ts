import { Temporal } from "temporal-polyfill";

/** Whether the zone is one that this computer's zone data knows, like "Europe/London". */
export function isZone(zone: string): boolean {
  try {
    Temporal.Instant.fromEpochMilliseconds(0).toZonedDateTimeISO(zone);
    return true;
  } catch {
    return false;
  }
}

/**
 * The moment at which something begins by the clock on the wall there. A time that the clocks show twice
 * is the first of the two, and one that they jump over is read with the offset before the jump, as
 * RFC 5545, 3.3.5 has it. Throws on an unknown zone.
 */
export function zonedStart(
  date: Temporal.PlainDate,
  time: Temporal.PlainTime,
  zone: string,
): Temporal.ZonedDateTime {
  return date.toPlainDateTime(time).toZonedDateTime(zone, { disambiguation: "compatible" });
}
