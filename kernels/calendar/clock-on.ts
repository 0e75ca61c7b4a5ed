import type { Temporal } from "temporal-polyfill";
import { zonedStart } from "./zoned-start.ts";

/**
 * What the clocks of a zone do with a time of a day: "once" on ordinary days; "twice" when they are put back over
 * it, 01:30 on 25 October 2026 in London; "never" when they are put forward over it, 01:30 on 29 March 2026 there.
 */
export type ClockOn = {
  readonly shown: "once" | "twice" | "never";
  /** the first of the two; for a time never shown, as many minutes after the change as it is after the gap began */
  readonly start: Temporal.ZonedDateTime;
};

/** The moment of a time by the clock on the wall, and whether the clock shows it. Throws on an unknown zone. */
export function clockOn(date: Temporal.PlainDate, time: Temporal.PlainTime, zone: string): ClockOn {
  const start = zonedStart(date, time, zone);
  const wall = date.toPlainDateTime(time);
  if (!start.toPlainDateTime().equals(wall)) return { shown: "never", start };
  const later = wall.toZonedDateTime(zone, { disambiguation: "later" });
  return { shown: later.equals(start) ? "once" : "twice", start };
}
