import { RRuleTemporal } from "rrule-temporal";
import { Temporal } from "temporal-polyfill";

/** { rule: "FREQ=MONTHLY;BYDAY=1SA", start: 2 January 2027, 09:00 in Europe/London } is every first Saturday. */
export type RuleStarts = {
  /** an RRULE as RFC 5545, 3.3.10 writes it, without its name */
  readonly rule: string;
  readonly start: Temporal.ZonedDateTime;
};

/** Whether there is more to a rule than can be counted: every second for a century. */
export type RuleRead =
  | { readonly kind: "starts"; readonly starts: readonly Temporal.ZonedDateTime[] }
  | { readonly kind: "unreadable"; readonly why: string }
  | { readonly kind: "too many" };

// every day for 27 years, or every hour for a year, before the search for one more gives up
const MOST_STEPS = 10_000;
// what falls into the span asked for: a year of hours is 8,784
const MOST_STARTS = 10_000;

/**
 * The moments from `from` until before `end` at which something that repeats begins. The first start belongs to it
 * only where the rule has it. A time that the clocks jump over is left out, as RFC 5545, 3.3.10 has it.
 */
export function ruleStarts(
  { rule, start }: RuleStarts,
  from: Temporal.ZonedDateTime,
  end: Temporal.ZonedDateTime,
): RuleRead {
  try {
    const read = new RRuleTemporal({
      rruleString: rule,
      dtstart: start,
      temporal: Temporal,
      maxIterations: MOST_STEPS,
    });
    const found = read.between(from, end.subtract({ nanoseconds: 1 }), true);
    return found.length > MOST_STARTS ? { kind: "too many" } : { kind: "starts", starts: found };
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    return /maximum|exceeded/i.test(why) ? { kind: "too many" } : { kind: "unreadable", why };
  }
}
