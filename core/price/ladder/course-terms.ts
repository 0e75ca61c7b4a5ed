import { type ExactMinor, type Minor, minor, roundToMinor } from "#core/words";
import { Fraction } from "fraction.js";

/** A course, or block: 6 sessions for 51.00, 8.50 a session. */
export type Course = { readonly sessions: number; readonly price: Minor };

export type CourseTerms = {
  readonly perSession: ExactMinor;
  /** for who joins with so many sessions left: remaining × per session, to the coin; the whole price at first */
  readonly lateJoiner: readonly { readonly remaining: number; readonly price: Minor }[];
  /** for the first session she cancels, the second, …: 1/N each in whole coins, and together the price */
  readonly refunds: readonly Minor[];
};

/** What a course costs who joins late and what comes back for a session that she cancels. Method: trade F19. */
export function courseTerms({ sessions, price }: Course): CourseTerms {
  checkSessions(sessions);
  const upTo = (count: number): Minor => roundToMinor(new Fraction(price).mul(count).div(sessions));
  const counts = Array.from({ length: sessions }, (_, index) => index + 1);
  return {
    perSession: new Fraction(price).div(sessions),
    lateJoiner: counts.toReversed().map((remaining) => ({ remaining, price: upTo(remaining) })),
    // the part up to this one less the part up to the one before, so that no coin is lost between them
    refunds: counts.map((count) => minor(upTo(count) - upTo(count - 1))),
  };
}

/** Sessions × per session × (1 − d), to the coin: 6 × 10.00 less 15 % is 51.00. */
export function coursePrice(sessions: number, perSession: Minor, discount: Fraction): Minor {
  checkSessions(sessions);
  return roundToMinor(new Fraction(perSession).mul(sessions).mul(new Fraction(1).sub(discount)));
}

export type MonthlySpread = {
  readonly perSession: Minor;
  readonly sessions: number;
  readonly year: Minor;
  /** twelve payments in whole coins that add to the year; they differ by a coin at most */
  readonly payments: readonly Minor[];
};

/** A year's sessions in twelve parts: 8.50 × 40 ÷ 12 = 28.33, with four payments of 28.34 to make up 340.00. */
export function monthlySpread(perSession: Minor, sessionsPerYear: number): MonthlySpread {
  checkSessions(sessionsPerYear);
  const year = minor(perSession * sessionsPerYear);
  const upTo = (month: number): number => Math.floor((year * month) / 12);
  return {
    perSession,
    sessions: sessionsPerYear,
    year,
    payments: Array.from({ length: 12 }, (_, index) => minor(upTo(index + 1) - upTo(index))),
  };
}

function checkSessions(sessions: number): void {
  if (!Number.isInteger(sessions) || sessions < 1) throw new RangeError(`sessions: ${sessions}`);
}
