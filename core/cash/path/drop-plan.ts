import { normalQuantile } from "#kernels/statistics";
import type { PathQuestion } from "../money-types.ts";
import { isKept, pathIncome } from "./path-chance.ts";
import type { PathMonth } from "./path-months.ts";

/** Which classes stay in each month: a bit for each that may go. Once gone a class stays away. */
export type DropPlan = { readonly kept: readonly number[]; readonly freedHours: number };

/** What the months from here on are worth at best, and the set that is kept in the first of them. */
type Best = { readonly hours: number; readonly coins: number; readonly kept: number };

/**
 * The order of letting go that frees the most hours over all the months, while in every month the income, with what
 * is kept, reaches the need with the chance that is asked. Of plans that free as much the one that earns most.
 * Exact: every set that may be kept in a month, and every way on from it (3^10 a month at most). `earliest` is the
 * first month, by position, in which a class may be gone. While not even all classes carry a month all are kept.
 */
export function dropPlan(
  months: readonly PathMonth[],
  question: PathQuestion,
  earliest: readonly number[],
): DropPlan {
  const all = 2 ** question.mayDrop.length - 1;
  const z = normalQuantile(question.level);
  // from the last month back: the best from each month on, for every set that was kept before it
  const tables: (readonly (Best | null)[])[] = [];
  for (let at = months.length - 1; at >= 0; at -= 1) {
    const after = tables[0];
    const here = setsOf(all).map((kept) => {
      if (kept !== all && !carries(months, at, kept, question, z)) return null;
      return withAfter(monthWorth(months[at], kept, question), after?.[kept], after === undefined);
    });
    const stay = earliest.reduce((set, first, one) => (first > at ? set | (1 << one) : set), 0);
    tables.unshift(setsOf(all).map((before) => bestWithin(before, before & stay, here)));
  }
  return followed(tables, all);
}

function setsOf(all: number): readonly number[] {
  return Array.from({ length: all + 1 }, (_, kept) => kept);
}

function carries(
  months: readonly PathMonth[],
  at: number,
  kept: number,
  question: PathQuestion,
  z: number,
): boolean {
  const { mean, deviation } = pathIncome(months, at, kept, question);
  return mean - z * deviation >= question.need;
}

function monthWorth(month: PathMonth | undefined, kept: number, { mayDrop }: PathQuestion): Best {
  let hours = 0;
  let coins = 0;
  for (const [one, { coins: brings, sessions }] of (month?.droppable ?? []).entries()) {
    if (isKept(kept, one)) coins += brings;
    else hours += (mayDrop[one]?.hours ?? 0) * sessions;
  }
  return { hours, coins, kept };
}

function withAfter(worth: Best, after: Best | null | undefined, isLast: boolean): Best | null {
  if (isLast) return worth;
  if (after === null || after === undefined) return null;
  return { hours: worth.hours + after.hours, coins: worth.coins + after.coins, kept: worth.kept };
}

/** Over every set within `before` that holds all of `stay`; a tie in hours and money goes to the larger set. */
function bestWithin(before: number, stay: number, here: readonly (Best | null)[]): Best | null {
  let best: Best | null = null;
  for (let kept = before; ; kept = (kept - 1) & before) {
    const worth = here[kept] ?? null;
    if ((kept & stay) === stay && worth !== null && (best === null || isBetter(worth, best))) best = worth;
    if (kept === 0) return best;
  }
}

// hours are sums of floats in different orders: a millionth of an hour is no difference
function isBetter(one: Best, other: Best): boolean {
  if (Math.abs(one.hours - other.hours) > 1e-6) return one.hours > other.hours;
  return one.coins > other.coins;
}

function followed(tables: readonly (readonly (Best | null)[])[], all: number): DropPlan {
  const kept: number[] = [];
  let before = all;
  for (const table of tables) {
    before = table[before]?.kept ?? before;
    kept.push(before);
  }
  return { kept, freedHours: tables[0]?.[all]?.hours ?? 0 };
}
