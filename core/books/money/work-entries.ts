import type { Heading, Means } from "../posting/account.ts";
import { type Entry, entry } from "../posting/entry.ts";

/**
 * Work that is paid by invoice: a studio's class for 30.00 is unpaid:studio:inv-7 +3000 · earned:studio −3000,
 * and when the studio pays bank +3000 · unpaid:studio:inv-7 −3000.
 */
export type Work = {
  readonly heading: Heading;
  /** the invoice, or whatever the payment will name */
  readonly invoice: string;
  readonly amount: number;
  readonly currency: string;
  readonly on: string;
};

export function workDone(it: Work): Entry {
  return entry(
    it.on,
    [
      { account: `unpaid:${it.heading}:${it.invoice}`, commodity: it.currency, amount: it.amount },
      { account: `earned:${it.heading}`, commodity: it.currency, amount: -it.amount },
    ],
    { what: `${it.heading} taught` },
  );
}

export function workPaid(it: Work, by: Means): Entry {
  return entry(
    it.on,
    [
      { account: by, commodity: it.currency, amount: it.amount },
      { account: `unpaid:${it.heading}:${it.invoice}`, commodity: it.currency, amount: -it.amount },
    ],
    { what: `${it.heading} paid` },
  );
}
