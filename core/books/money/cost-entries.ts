import type { CostHeading, Means } from "../posting/account.ts";
import { type About, type Entry, entry } from "../posting/entry.ts";

/**
 * What teaching costs, from the day it is owed until the day it is paid: a hall's 27.00 for an evening is
 *   cost:hall +2700 · due:hall:tithe-barn −2700, and when its invoice is paid due:hall:tithe-barn +2700 · bank −2700.
 * `to` is the hall or the cover teacher by id. Amounts are whole minor units, above nought.
 */
export type Cost = {
  readonly cost: CostHeading;
  readonly to: string;
  readonly amount: number;
  readonly currency: string;
  readonly on: string;
  readonly session?: string;
};

/** It was incurred and is still to be paid. */
export function costDue(it: Cost): Entry {
  return costEntry(it, "due", [`cost:${it.cost}`, `due:${it.cost}:${it.to}`]);
}

/** It is not to be paid after all, like the hire of a date that the hall took back. */
export function costLetGo(it: Cost): Entry {
  return costEntry(it, "let go", [`due:${it.cost}:${it.to}`, `cost:${it.cost}`]);
}

/** What was due is paid. */
export function duePaid(it: Cost, by: Means): Entry {
  return costEntry(it, "paid", [`due:${it.cost}:${it.to}`, by]);
}

/** It is bought and paid at once, like music or petrol. */
export function costPaid(it: Cost, by: Means): Entry {
  return costEntry(it, "bought", [`cost:${it.cost}`, by]);
}

/** The amount comes into the first account and goes out of the second. */
function costEntry(
  it: Cost,
  what: string,
  [into, from]: readonly [Entry["lines"][number]["account"], Entry["lines"][number]["account"]],
): Entry {
  if (!(it.amount > 0)) throw new RangeError(`a cost of ${it.amount}`);
  return entry(
    it.on,
    [
      { account: into, commodity: it.currency, amount: it.amount },
      { account: from, commodity: it.currency, amount: -it.amount },
    ],
    aboutOf(it, what),
  );
}

function aboutOf({ cost, to, session }: Cost, what: string): About {
  return {
    what: `${cost} ${what}`,
    ...(cost === "hall" ? { hall: to } : { person: to }),
    ...(session === undefined ? {} : { session }),
  };
}
