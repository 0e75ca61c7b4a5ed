import { bad, type CurrencyCode, good, problem, type Result, readAmount, together } from "#core/words";
import type { PricesDocument } from "./evening-document.ts";
import { oneClass, type PricedRung } from "./priced-rung.ts";

const MOST_SESSIONS = 366;

/** A year paid in twelve parts brings its price a session. Problem besides those of amounts: "sessions-out-of-range". */
export function readMonthly(
  monthly: PricesDocument["monthly"],
  currency: CurrencyCode,
): Result<readonly PricedRung[]> {
  if (monthly === undefined) return good([]);
  const read = together({
    perSession: readAmount(monthly.perSession, currency, "prices.monthly.perSession"),
    sessions: readSessions(monthly.sessionsPerYear),
  });
  return read.ok ? good(oneClass("monthly", read.value.perSession)) : read;
}

function readSessions(sessions: number | undefined): Result<number | null> {
  if (sessions === undefined) return good(null);
  if (Number.isInteger(sessions) && sessions >= 1 && sessions <= MOST_SESSIONS) return good(sessions);
  const says = `${sessions} sessions a year cannot be meant.`;
  const next = `Give whole sessions, 1 to ${MOST_SESSIONS}.`;
  return bad(problem("sessions-out-of-range", "prices.monthly.sessionsPerYear", says, next));
}
