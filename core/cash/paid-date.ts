import type { Temporal } from "temporal-polyfill";
import type { PaidTerms } from "./money-types.ts";

/** 9 March, 30 days after the month: 30 April. 9 March, 14 days before the month: 15 February. */
export function paidDate(session: Temporal.PlainDate, { when, days }: PaidTerms): Temporal.PlainDate {
  switch (when) {
    case "on-the-day":
      return session;
    case "days-after":
      return session.add({ days });
    case "after-month":
      return session.with({ day: session.daysInMonth }).add({ days });
    case "before-month":
      return session.with({ day: 1 }).subtract({ days });
  }
}
