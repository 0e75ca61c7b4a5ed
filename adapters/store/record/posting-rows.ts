import type { RecordCommit } from "#app/ports";
import type { Tables } from "../tables.ts";

type Postings = RecordCommit["postings"];

/** Throws for an action whose lines do not add up to nothing in each commodity, or are no whole numbers. */
export function checkBalanced(postings: Postings): void {
  const sums = new Map<string, number>();
  for (const { commodity, amount } of postings) sums.set(commodity, (sums.get(commodity) ?? 0) + amount);
  for (const [commodity, sum] of sums) {
    if (sum !== 0) throw new RangeError(`postings that do not balance: ${sum} of ${commodity} too many`);
  }
  for (const { amount, account } of postings) {
    if (!Number.isSafeInteger(amount)) throw new RangeError(`no whole number on ${account}: ${amount}`);
  }
}

/** Lines are numbered from 1 in the order given. */
export function postingRows({ practice, action, postings }: RecordCommit): readonly Tables["posting"][] {
  return postings.map(({ date, account, commodity, amount, about }, index) => ({
    practice,
    action,
    line: index + 1,
    date,
    account,
    commodity,
    amount,
    about,
  }));
}
