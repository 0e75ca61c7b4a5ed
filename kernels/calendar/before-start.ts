import type { Temporal } from "temporal-polyfill";

/**
 * How long before: elapsed hours or days of the calendar. They differ over a change of the clocks:
 * "24 hours" before Sunday 18:00 may be Saturday 17:00, "1 day" before is Saturday 18:00 (RFC 5545, 3.3.6).
 */
export type Ahead = { readonly hours: number } | { readonly days: number };

export function beforeStart(start: Temporal.ZonedDateTime, ahead: Ahead): Temporal.ZonedDateTime {
  return start.subtract(ahead);
}
