import type { Means } from "../posting/account.ts";
import { type Entry, entry } from "../posting/entry.ts";

/*
 * Money that changes its place and is neither taken nor spent: takings brought to the bank, a card company paying out
 * less its fee, her own money as the float, and what the box held more or less than the books.
 */
type Moved = { readonly amount: number; readonly currency: string; readonly on: string };

/** From one place to another; a fee kept on the way is a cost. 100.00 of card takings arrive as 98.25. */
export function moneyMoved(
  it: Moved & { readonly from: Means; readonly to: Means; readonly fee: number },
): Entry {
  if (it.from === it.to) throw new RangeError(`from ${it.from} to itself`);
  return entry(
    it.on,
    [
      { account: it.from, commodity: it.currency, amount: -it.amount },
      { account: it.to, commodity: it.currency, amount: it.amount - it.fee },
      { account: "cost:fees", commodity: it.currency, amount: it.fee },
    ],
    { what: `${it.from} to ${it.to}` },
  );
}

/** Her own money put into the practice, like the float of the box. */
export function ownPutIn(it: Moved & { readonly to: Means }): Entry {
  return between(it, it.to, "own:put-in", "own money put in");
}

/** Money she takes out for herself; not a cost. */
export function ownTakenOut(it: Moved & { readonly from: Means }): Entry {
  return between(it, "own:taken-out", it.from, "taken out for herself");
}

/** The box was counted: more than the books say comes in, less goes out, on a line that says so. */
export function cashFound(it: Omit<Moved, "amount"> & { readonly difference: number }): Entry {
  return between({ ...it, amount: it.difference }, "cash", "difference:cash", "cash counted");
}

function between(
  { amount, currency, on }: Moved,
  into: Means | "own:taken-out",
  from: Means | "own:put-in" | "difference:cash",
  what: string,
): Entry {
  return entry(
    on,
    [
      { account: into, commodity: currency, amount },
      { account: from, commodity: currency, amount: -amount },
    ],
    { what },
  );
}
