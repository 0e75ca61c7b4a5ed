import type { Heading, Means } from "../posting/account.ts";
import { type About, type Entry, entry } from "../posting/entry.ts";

/*
 * A place that is paid for by itself, not out of a pass: 10.00 in cash before the class is owed until it is taught,
 *   cash +1000 · owed:single:pl-1 −1000, and on the evening owed:single:pl-1 +1000 · earned:single −1000.
 * What is taught before it is paid stands under unpaid until the money comes.
 */
export type PlaceMoney = {
  readonly place: string;
  readonly heading: Heading;
  readonly currency: string;
  /** whole minor units */
  readonly price: number;
  /** what has come in for it so far, less what went back */
  readonly paid: number;
};

/** Money comes in for a place, on a day; `taught` when the class was before. */
export function placePaid(
  it: PlaceMoney,
  { amount, by, on, taught }: { amount: number; by: Means; on: string; taught: boolean },
): Entry {
  const missing = taught ? Math.max(0, Math.min(amount, it.price - it.paid)) : 0;
  return entry(
    on,
    [
      { account: by, commodity: it.currency, amount },
      { account: `unpaid:${it.heading}:${it.place}`, commodity: it.currency, amount: -missing },
      { account: `owed:${it.heading}:${it.place}`, commodity: it.currency, amount: missing - amount },
    ],
    about(it, "place paid"),
  );
}

/** The place was taught, or is charged as if: what was paid ahead is earned, the rest is still to be paid. */
export function placeTaught(it: PlaceMoney, on: string): Entry {
  const ahead = Math.min(it.paid, it.price);
  return entry(
    on,
    [
      { account: `owed:${it.heading}:${it.place}`, commodity: it.currency, amount: ahead },
      { account: `unpaid:${it.heading}:${it.place}`, commodity: it.currency, amount: it.price - ahead },
      { account: `earned:${it.heading}`, commodity: it.currency, amount: -it.price },
    ],
    about(it, "place taught"),
  );
}

/**
 * What was paid for a place goes back to who paid. Once the class is `taught`, what was paid beyond the price goes first,
 * and with the rest the price is unpaid again. Throws when more goes back than came in.
 */
export function placeGivenBack(
  it: PlaceMoney,
  { amount, by, on, taught = false }: { amount: number; by: Means; on: string; taught?: boolean },
): Entry {
  if (amount > it.paid) throw new RangeError(`${amount} back of ${it.paid} paid for ${it.place}`);
  const ahead = taught ? Math.min(amount, Math.max(0, it.paid - it.price)) : amount;
  return entry(
    on,
    [
      { account: `owed:${it.heading}:${it.place}`, commodity: it.currency, amount: ahead },
      { account: `unpaid:${it.heading}:${it.place}`, commodity: it.currency, amount: amount - ahead },
      { account: by, commodity: it.currency, amount: -amount },
    ],
    about(it, "place given back"),
  );
}

function about({ place }: PlaceMoney, what: string): About {
  return { what, place };
}
