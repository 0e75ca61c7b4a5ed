import { beforeStart, readPlainTime, zonedStart } from "#kernels/calendar";
import type { Temporal } from "temporal-polyfill";
import { inZone, written } from "./instants.ts";
import type { NoticeRule } from "./notice-rule.ts";

/**
 * The last instant at which giving up is in time, as "2026-11-24T18:30:00Z".
 *
 * A time that the clocks of the hall jump over is read with the offset before the jump, and one that they show
 * twice is the first of the two (RFC 5545, 3.3.5). A time of day that falls after the start is the start: noon
 * of the same day says nothing about a class at 9:30 but that it can be given up until it begins.
 */
export function cutOff(rule: NoticeRule, start: string, zone: string): string {
  const begins = inZone(start, zone);
  const moment = before(rule, begins);
  return written(moment.epochMilliseconds > begins.epochMilliseconds ? begins : moment);
}

function before(rule: NoticeRule, begins: Temporal.ZonedDateTime): Temporal.ZonedDateTime {
  switch (rule.kind) {
    case "elapsed":
      return beforeStart(begins, { hours: rule.hours });
    case "days":
      return beforeStart(begins, { days: rule.days });
    case "clock":
      return zonedStart(
        begins.toPlainDate().subtract({ days: rule.daysBefore }),
        timeOf(rule.at),
        begins.timeZoneId,
      );
  }
}

function timeOf(text: string): Temporal.PlainTime {
  const time = readPlainTime(text);
  if (time === undefined) throw new RangeError(`not a time of day: ${text}`);
  return time;
}
