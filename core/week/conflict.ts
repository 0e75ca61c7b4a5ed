import { bestWeek, searchWith, type WeekSearch } from "./best-week.ts";
import type { Week, WeekLimits } from "./week-types.ts";

/** What a week has to keep to and could be let go of: a limit, a promise or a time that is fixed for other things. */
export type Binding =
  | { readonly kind: "limit"; readonly limit: LimitName }
  | { readonly kind: "promise"; readonly candidate: number }
  /** position in the week's commitments */
  | { readonly kind: "commitment"; readonly at: number };

export type LimitName =
  | "classesAWeek"
  | "classesADay"
  | "backToBack"
  | "evenings"
  | "freeDays"
  | "restMinutes";

// promises come last, so that where a promise alone is in the way no limit is blamed
const LIMITS: readonly LimitName[] = [
  "evenings",
  "restMinutes",
  "backToBack",
  "freeDays",
  "classesADay",
  "classesAWeek",
];

/**
 * A set of limits and promises that no week with `force` in it can keep to together; without any one of them the rest
 * can be kept. It is minimal, not proven smallest: another such set may have fewer. Found by the deletion filter
 * (Chinneck and Dravnieks 1991, from memory): each is left out in turn, for good where that changes nothing. Null where
 * a week is possible, or where the search cannot tell.
 */
export function conflict(search: WeekSearch, force: readonly number[] = []): readonly Binding[] | null {
  let kept = bindingsOf(search.week, force);
  if (!impossible(search, kept, force)) return null;
  for (const one of kept) {
    const fewer = kept.filter((it) => it !== one);
    if (impossible(search, fewer, force)) kept = fewer;
  }
  return kept;
}

function bindingsOf({ limits, candidates, commitments }: Week, force: readonly number[]): readonly Binding[] {
  const stated = LIMITS.filter((limit) => limits[limit] !== loose[limit]);
  const promised = candidates.flatMap(({ fixed }, at) => (fixed && !force.includes(at) ? [at] : []));
  return [
    ...stated.map((limit) => ({ kind: "limit" as const, limit })),
    ...promised.map((candidate) => ({ kind: "promise" as const, candidate })),
    ...commitments.map((_, at) => ({ kind: "commitment" as const, at })),
  ];
}

const loose: Pick<WeekLimits, LimitName> = {
  classesAWeek: null,
  classesADay: null,
  backToBack: null,
  evenings: null,
  freeDays: 0,
  restMinutes: 0,
};

function impossible(search: WeekSearch, kept: readonly Binding[], force: readonly number[]): boolean {
  const week = keepingOnly(search.week, kept);
  return bestWeek(searchWith(search, week), { goal: "any", force }).kind === "impossible";
}

/** The week with only these limits, promises and fixed times. No rest at all would still forbid to be home after leaving. */
function keepingOnly(week: Week, kept: readonly Binding[]): Week {
  const limits = new Set(kept.flatMap((it) => (it.kind === "limit" ? [it.limit] : [])));
  const promises = new Set(kept.flatMap((it) => (it.kind === "promise" ? [it.candidate] : [])));
  const fixed = new Set(kept.flatMap((it) => (it.kind === "commitment" ? [it.at] : [])));
  const commitments = week.commitments.filter((_, at) => fixed.has(at));
  const freed = Object.fromEntries(
    LIMITS.flatMap((limit) => (limits.has(limit) ? [] : [[limit, loose[limit]]])),
  );
  return {
    ...week,
    limits: { ...week.limits, ...freed },
    commitments: commitments.length === week.commitments.length ? week.commitments : commitments,
    candidates: week.candidates.map((one, at) => ({ ...one, fixed: one.fixed && promises.has(at) })),
  };
}
