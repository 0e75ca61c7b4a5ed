import { exactNumber, roundToMinor } from "#core/words";
import type { CashBook } from "./cash-book.ts";

/** How far the balance falls under the opening one, a month of what goes out besides tax, and both together. */
export type Reserve = { readonly fall: number; readonly month: number; readonly advised: number };

/**
 * The bank should hold so much on the first day that one month of costs is still there at the lowest point:
 * the trough and a month.
 */
export function reserveFor(book: CashBook, opening: number): Reserve {
  const fall = Math.max(0, opening - book.lowest);
  const out = book.months.reduce((sum, each) => sum + each.out, 0);
  const month = roundToMinor(exactNumber(out).div(book.months.length));
  return { fall, month, advised: fall + month };
}
