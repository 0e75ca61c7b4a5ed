import type { Temporal } from "temporal-polyfill";

/** One change of the clocks: at 01:00 UTC on 29 March 2026 the clocks of London go on by 60 minutes. */
export type ClockChange = {
  /** the date there on which the clocks change */
  readonly date: Temporal.PlainDate;
  readonly at: Temporal.Instant;
  /** minutes by which the clocks are put on; below nought when they are put back */
  readonly minutes: number;
};

const NANOSECONDS_A_MINUTE = 60_000_000_000;

/** Every change of the clocks of a zone from one date until another, both included. Throws on an unknown zone. */
export function clockChanges(
  from: Temporal.PlainDate,
  until: Temporal.PlainDate,
  zone: string,
): readonly ClockChange[] {
  const end = until.add({ days: 1 }).toZonedDateTime(zone);
  const found: ClockChange[] = [];
  // a nanosecond earlier, so that a change on the stroke of the first midnight is found too
  let at = from.toZonedDateTime(zone).subtract({ nanoseconds: 1 }).getTimeZoneTransition("next");
  while (at !== null && at.epochNanoseconds < end.epochNanoseconds) {
    const before = at.subtract({ nanoseconds: 1 });
    const minutes = (at.offsetNanoseconds - before.offsetNanoseconds) / NANOSECONDS_A_MINUTE;
    // zone data also has changes of name alone, which move no clock
    if (minutes !== 0) found.push({ date: at.toPlainDate(), at: at.toInstant(), minutes });
    at = at.getTimeZoneTransition("next");
  }
  return found;
}
