import { exactNumber, roundToMinor } from "#core/words";
import type { Flow, OwedAfter } from "./flow.ts";
import { bringsOn, type Case, type Passes, type Work } from "./money-types.ts";

type PassMoney = { readonly sold: readonly Flow[]; readonly owed: readonly OwedAfter[] };

/**
 * When pass money comes in. A session uses its share of the takings from what was sold before; when that does not
 * cover it, passes for so many sessions are sold that day, so that what is owed covers them.
 * Only the sessions from the first day on: what was sold before is in `owed`.
 */
export function passFlows(work: Work, passes: Passes, from: string, at: Case): PassMoney {
  const days = work.dates.map((date) => date.toString()).filter((date) => date >= from);
  const use = passUses(work, at);
  const uses = days.map(use);
  const sold: Flow[] = [];
  const owedAfter: OwedAfter[] = [];
  let owed: number = passes.owed;
  for (const [index, date] of days.entries()) {
    const here = uses[index] ?? 0;
    if (owed < here) {
      const ahead = uses.slice(index, index + passes.sessions).reduce((sum, each) => sum + each, 0);
      sold.push({ date, coins: ahead - owed, kind: "passes", name: work.name, business: true });
      owed = ahead;
    }
    owed -= here;
    owedAfter.push({ date, coins: owed });
  }
  return { sold, owed: owedAfter };
}

/** The part of the takings of a day that passes have paid, to the coin; few amounts come again and again. */
export function passUses(work: Work, at: Case): (date: string) => number {
  const { passes } = work;
  if (passes === null) return () => 0;
  const known = new Map<number, number>();
  return (date) => {
    const coins = bringsOn(work, date)[at];
    const use = known.get(coins) ?? roundToMinor(exactNumber(coins).mul(passes.share));
    known.set(coins, use);
    return use;
  };
}
