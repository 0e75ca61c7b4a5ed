import { isCurrency } from "#core/words";
import { type Account, isClassAccount, isMoneyAccount } from "./account.ts";

/**
 * One thing that happened, in double entry: 85.00 in cash for a pass of ten is
 *   cash +8500 GBP · owed:pass:p7 −8500 GBP · left:oriel +10 classes:p7 · issued −10 classes:p7.
 * Invariant: the amounts of each commodity add to nought. Nothing in an entry is ever changed; a mistake is
 * undone by another entry.
 */
export type Entry = {
  /** the day in the hall's zone, "2026-11-25" */
  readonly date: string;
  readonly lines: readonly Posting[];
  readonly about: About;
};

export type Posting = {
  readonly account: Account;
  /** "GBP", or "classes:p7" for the classes of one pass */
  readonly commodity: string;
  /** whole minor units or whole classes; above nought comes in, below goes out */
  readonly amount: number;
};

/** What an entry came from: what happened, and to which pass, place, session, person or hall. */
export type About = {
  readonly what: string;
  readonly pass?: string;
  readonly place?: string;
  readonly session?: string;
  readonly person?: string;
  readonly hall?: string;
};

/** An entry without its empty lines. Throws when a commodity does not balance or a line is not sound. */
export function entry(date: string, lines: readonly Posting[], about: About): Entry {
  const kept = lines.filter((line) => line.amount !== 0);
  for (const line of kept) mustBeSound(line);
  for (const commodity of new Set(kept.map((line) => line.commodity))) {
    const left = kept.reduce((sum, line) => (line.commodity === commodity ? sum + line.amount : sum), 0);
    if (left !== 0) throw new RangeError(`${about.what} of ${date} is out by ${left} ${commodity}`);
  }
  return { date, lines: kept, about };
}

export function classesOf(pass: string): string {
  return `classes:${pass}`;
}

function mustBeSound({ account, commodity, amount }: Posting): void {
  if (!Number.isSafeInteger(amount)) throw new RangeError(`not a whole amount: ${amount} in ${account}`);
  const fits = isCurrency(commodity)
    ? isMoneyAccount(account)
    : /^classes:[^:\s]+$/.test(commodity) && isClassAccount(account);
  if (!fits) throw new RangeError(`${commodity} does not belong in ${account}`);
}
