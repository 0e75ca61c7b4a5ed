import { bad, good, problem, type Result } from "#core/words";
import { readPlainTime } from "#kernels/calendar";

/**
 * By when something can still be given up, before a start of Thursday 18:30:
 * { kind: "elapsed", hours: 24 } is exact elapsed time; { kind: "days", days: 1 } is the same time by the
 * clock of the hall on the day before; { kind: "clock", daysBefore: 0, at: "12:00" } is noon of the same day.
 * The first two differ by an hour when the clocks change in between (RFC 5545, 3.3.6: PT24H and P1D).
 */
export type NoticeRule =
  | { readonly kind: "elapsed"; readonly hours: number }
  | { readonly kind: "days"; readonly days: number }
  | { readonly kind: "clock"; readonly daysBefore: number; readonly at: string };

/** 24 hours for a student, 28 days for a hall: common practice, no source. Both can be changed. */
export const usualNotice: { readonly student: NoticeRule; readonly hall: NoticeRule } = {
  student: { kind: "elapsed", hours: 24 },
  hall: { kind: "days", days: 28 },
};

// a year is more notice than any hall or class asks
const MOST_DAYS = 366;

/** A rule as she wrote it. Problems: "notice-out-of-range", "notice-time-unreadable". */
export function readNoticeRule(rule: NoticeRule, place: string): Result<NoticeRule> {
  switch (rule.kind) {
    case "elapsed":
      return inRange(rule, rule.hours, MOST_DAYS * 24, "hours", `${place}.hours`);
    case "days":
      return inRange(rule, rule.days, MOST_DAYS, "days", `${place}.days`);
    case "clock":
      return readPlainTime(rule.at) === undefined
        ? bad(unreadable(rule.at, `${place}.at`))
        : inRange(rule, rule.daysBefore, MOST_DAYS, "days", `${place}.daysBefore`);
  }
}

function inRange(
  rule: NoticeRule,
  count: number,
  most: number,
  unit: string,
  place: string,
): Result<NoticeRule> {
  if (Number.isInteger(count) && count >= 0 && count <= most) return good(rule);
  const says = `A notice of ${count} ${unit} cannot be meant.`;
  return bad(problem("notice-out-of-range", place, says, `Give whole ${unit} from 0 to ${most}.`));
}

function unreadable(text: string, place: string) {
  const says = `“${text.slice(0, 40)}” is not a time of day.`;
  return problem("notice-time-unreadable", place, says, "Write it like 12:00.");
}
