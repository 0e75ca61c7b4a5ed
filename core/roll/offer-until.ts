import { Temporal } from "temporal-polyfill";

/*
 * Offered at 20:30 for a class tomorrow evening → until 09:30: half an hour before nine, the rest from eight on.
 * All figures are common practice without a source: two hours to answer by day, quiet from nine to eight, and
 * inside the last three hours whoever replies first.
 */
export const OFFER_HOURS = 2;
export const FIRST_TO_REPLY_HOURS = 3;
const LATEST_HOURS_BEFORE = 1;
const DAY_BEGINS = 8;
const QUIET_BEGINS = 21;

export type OfferFor = {
  /** ISO 8601 instants, UTC */
  readonly now: string;
  readonly starts: string;
  readonly zone: string;
};

/** When an offer made now must be answered by; null where the first to reply has the place. */
export function offerUntil({ now, starts, zone }: OfferFor): string | null {
  const made = Temporal.Instant.from(now);
  const start = Temporal.Instant.from(starts);
  if (hoursBetween(made, start) <= FIRST_TO_REPLY_HOURS) return null;
  const answered = afterDayHours(made.toZonedDateTimeISO(zone), OFFER_HOURS);
  const latest = start.subtract({ hours: LATEST_HOURS_BEFORE });
  return Temporal.Instant.compare(answered, latest) < 0 ? answered.toString() : latest.toString();
}

function hoursBetween(from: Temporal.Instant, until: Temporal.Instant): number {
  return (until.epochMilliseconds - from.epochMilliseconds) / 3_600_000;
}

/** The moment at which so many hours outside the quiet ones have gone by. */
function afterDayHours(from: Temporal.ZonedDateTime, hours: number): Temporal.Instant {
  const awake = dayFrom(from);
  const quiet = awake.withPlainTime({ hour: QUIET_BEGINS });
  const left = hoursBetween(awake.toInstant(), quiet.toInstant());
  return hours <= left
    ? awake.toInstant().add({ nanoseconds: Math.round(hours * 3.6e12) })
    : afterDayHours(quiet, hours - left);
}

/** Now, or the next eight o'clock where it is quiet now. */
function dayFrom(at: Temporal.ZonedDateTime): Temporal.ZonedDateTime {
  if (at.hour >= QUIET_BEGINS) return at.add({ days: 1 }).withPlainTime({ hour: DAY_BEGINS });
  return at.hour < DAY_BEGINS ? at.withPlainTime({ hour: DAY_BEGINS }) : at;
}
