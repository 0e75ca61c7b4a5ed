import type { WeekPlan } from "#core/week";

/** A change of a plan, before its reader sees it. */
export type ChangePlan = (recipe: (before: WeekPlan) => WeekPlan) => void;

type Own = WeekPlan["own"][number];
export type Other = WeekPlan["candidates"][number];

/** What she says here about a class of the practice. */
export function ownOf({ own }: WeekPlan, id: string): Own {
  return own.find((it) => it.class === id) ?? { class: id, out: false, fixed: false };
}

export function withOwn(plan: WeekPlan, id: string, part: Partial<Own>): WeekPlan {
  const next: Own = { ...ownOf(plan, id), ...part };
  const others = plan.own.filter((it) => it.class !== id);
  // nothing is kept that says nothing
  const silent = !next.out && !next.fixed && next.contribution === undefined && next.sessions === undefined;
  return { ...plan, own: silent ? others : [...others, cleaned(next)] };
}

function cleaned({ contribution, sessions, ...rest }: Own): Own {
  return {
    ...rest,
    ...(contribution === undefined ? {} : { contribution }),
    ...(sessions === undefined ? {} : { sessions }),
  };
}

export function withOther(plan: WeekPlan, id: string, part: Partial<Other>): WeekPlan {
  return {
    ...plan,
    candidates: plan.candidates.map((it) => (it.id === id ? { ...it, ...part } : it)),
  };
}

/** Any candidate, of the practice or not, changed alike. */
export function withOffered(
  plan: WeekPlan,
  id: string,
  part: { readonly out?: boolean; readonly fixed?: boolean },
): WeekPlan {
  return plan.candidates.some((it) => it.id === id) ? withOther(plan, id, part) : withOwn(plan, id, part);
}

/** Without a candidate, and without what is only about it. */
export function withoutOther(plan: WeekPlan, id: string): WeekPlan {
  return {
    ...plan,
    candidates: plan.candidates.filter((it) => it.id !== id),
    wishes: plan.wishes.filter((it) => it.kind !== "rather-not" || it.candidate !== id),
    guesses: plan.guesses.filter((it) => !it.startsWith(`candidates.${id}.`)),
  };
}

/** Without a place and the ways to it. */
export function withoutPlace(plan: WeekPlan, id: string): WeekPlan {
  return {
    ...plan,
    places: plan.places.filter((it) => it.id !== id),
    travel: plan.travel.filter(({ from, to }) => from !== id && to !== id),
    guesses: plan.guesses.filter((it) => !it.startsWith("travel.") || !it.split(".").includes(id)),
  };
}

type Way = WeekPlan["travel"][number];

/** A way stated anew, or no longer stated where `way` is null. */
export function withWay(
  plan: WeekPlan,
  from: string,
  to: string,
  way: Omit<Way, "from" | "to"> | null,
): WeekPlan {
  const others = plan.travel.filter((it) => it.from !== from || it.to !== to);
  if (way === null) return { ...plan, travel: others };
  const at = plan.travel.findIndex((it) => it.from === from && it.to === to);
  const stated = { from, to, ...way };
  if (at < 0) return { ...plan, travel: [...others, stated] };
  return { ...plan, travel: plan.travel.map((it, index) => (index === at ? stated : it)) };
}
