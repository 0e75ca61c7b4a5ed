import type { MoneyPlan } from "#core/cash";
import type { ChangePlan } from "./plan-form.ts";

export type Own = MoneyPlan["own"][number];
export type Work = MoneyPlan["work"][number];
export type Move = MoneyPlan["moves"][number];
export type Tax = NonNullable<MoneyPlan["tax"]>;
export type Path = NonNullable<MoneyPlan["path"]>;
export type Amount = Work["perSession"];
export type Paid = NonNullable<Work["paid"]>;
export type { ChangePlan };

/** What she says here about a class of the practice. */
export function ownOf({ own }: MoneyPlan, id: string): Own {
  return own.find((it) => it.class === id) ?? { class: id, out: false, changes: [] };
}

export function withOwn(plan: MoneyPlan, id: string, recipe: (before: Own) => Own): MoneyPlan {
  const others = plan.own.filter((it) => it.class !== id);
  return { ...plan, own: [...others, recipe(ownOf(plan, id))] };
}

export function withWork(plan: MoneyPlan, id: string, part: Partial<Work>): MoneyPlan {
  return { ...plan, work: plan.work.map((it) => (it.id === id ? { ...it, ...part } : it)) };
}

/** Without a work, and without what is only about it. */
export function withoutWork(plan: MoneyPlan, id: string): MoneyPlan {
  const { path } = plan;
  return {
    ...plan,
    work: plan.work.filter((it) => it.id !== id),
    guesses: plan.guesses.filter((it) => !it.startsWith(`work.${id}.`)),
    ...(path === undefined ? {} : { path: { ...path, mayDrop: path.mayDrop.filter((it) => it.id !== id) } }),
  };
}

export function withMove(plan: MoneyPlan, id: string, part: Partial<Move>): MoneyPlan {
  return { ...plan, moves: plan.moves.map((it) => (it.id === id ? { ...it, ...part } : it)) };
}

export function withoutMove(plan: MoneyPlan, id: string): MoneyPlan {
  return {
    ...plan,
    moves: plan.moves.filter((it) => it.id !== id),
    guesses: plan.guesses.filter((it) => !it.startsWith(`moves.${id}.`)),
  };
}

export type Drop = Path["mayDrop"][number];

/** Whether a work may go as own classes grow; null for it stays. */
export function withDrop(plan: MoneyPlan, id: string, drop: Omit<Drop, "id"> | null): MoneyPlan {
  const path = plan.path ?? freshPath;
  const others = path.mayDrop.filter((it) => it.id !== id);
  return { ...plan, path: { ...path, mayDrop: drop === null ? others : [...others, { id, ...drop }] } };
}

// the need is asked before anything is answered: nought is told as a problem at its box
export const freshPath: Path = { need: "0", level: 0.8, window: 3, together: 0.3, mayDrop: [] };
