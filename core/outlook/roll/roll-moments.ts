import { type Alike, type RollRates, stayingCurve } from "./roll-rates.ts";

/** Regulars who are there before the first session: so many people, each for so many weeks already. */
export type RegularsBefore = {
  readonly people: number;
  readonly weeks: number;
  /** a count that is known; else a mean about which it is uncertain like a Poisson count */
  readonly known: boolean;
};

/** The sessions in their order: the season of each, and its newcomers where they were counted. */
export type RollPlan = {
  readonly seasons: readonly number[];
  /** null where nobody counted them, or the session lies ahead */
  readonly newcomers: readonly (number | null)[];
  /** newcomers expected beyond those of an ordinary week, where an opening still brings some; none when left out */
  readonly more?: readonly number[];
  readonly before: readonly RegularsBefore[];
  readonly alike: Alike;
};

/**
 * Mean and covariance of the people who want to come, session by session; `covariance[s * n + t]`, s ≤ t. Where
 * newcomers were counted it is the others alone: nothing is uncertain about those.
 */
export type RollMoments = {
  readonly sessions: number;
  readonly mean: Float64Array;
  readonly covariance: Float64Array;
};

/**
 * How many want to come to each session, exactly to the second moment. Newcomers arrive Poisson(λ·season) and are
 * there at once; each stays with r, is still there k sessions later with S(k), and comes with a·season, at most 1.
 * So the newcomers of one session, thinned, are independent Poisson counts at every later one, demand is Poisson with
 * the sum of their means, and two sessions share those who come to both: that is their covariance. Known people are
 * binomial: the product of their chances is taken off. Method: methods 5.
 */
export function rollMoments(rates: RollRates, plan: RollPlan): RollMoments {
  const sessions = plan.seasons.length;
  const longest = Math.max(0, ...plan.before.map(({ weeks }) => weeks));
  const still = stayingCurve(rates.leaves, plan.alike, sessions + longest);
  const come = Float64Array.from(plan.seasons, (season) => Math.min(1, rates.attends * season));
  const moments = {
    sessions,
    mean: new Float64Array(sessions),
    covariance: new Float64Array(sessions * sessions),
  };
  addNewcomers(rates, plan, still, come, moments);
  for (const group of plan.before) addBefore(group, still, come, moments);
  return moments;
}

// The two loops below run a thousand times for one posterior, over every pair of sessions and every cohort before
// them: they are kept plain, without a call or a check inside.

function addNewcomers(
  { newcomers, stays }: RollRates,
  { seasons, newcomers: counted, more = [] }: RollPlan,
  still: Float64Array,
  come: Float64Array,
  { sessions, mean, covariance }: RollMoments,
): void {
  const arriving = Float64Array.from(
    seasons,
    (season, at) => counted[at] ?? newcomers * season + (more[at] ?? 0),
  );
  const uncertain = Float64Array.from(seasons, (_, at) => (typeof counted[at] === "number" ? 0 : 1));
  const shared = new Float64Array(sessions);
  for (let s = 0; s < sessions; s += 1) {
    const comes = come[s]! * stays;
    let expected = 0;
    let own = 0;
    for (let u = 0; u < s; u += 1) {
      // of a counted cohort the product of the chances is off: it is binomial, not Poisson
      const people = arriving[u]!;
      const there = still[s - u]!;
      const known = 1 - uncertain[u]!;
      expected += people * there;
      own += people * there * (1 - known * comes * there);
      // whoever comes later was still there at s; whether she came to s is a luck of its own
      shared[u] = people * (1 - known * stays * there);
    }
    const fresh = arriving[s]! * uncertain[s]!;
    mean[s] = fresh + expected * comes;
    covariance[s * sessions + s] = fresh + own * comes;
    for (let t = s + 1; t < sessions; t += 1) {
      let both = 0;
      for (let u = 0; u < s; u += 1) both += shared[u]! * still[t - u]!;
      // the newcomers of s themselves come to s for sure
      covariance[s * sessions + t] = come[t]! * (comes * both + fresh * stays * still[t - s]!);
    }
  }
}

/** Those who are there before the first session, at which they are all still there. */
function addBefore(
  { people, weeks, known }: RegularsBefore,
  still: Float64Array,
  come: Float64Array,
  { sessions, mean, covariance }: RollMoments,
): void {
  const there = Float64Array.from(come, (_, session) => still[weeks + session]! / still[weeks]!);
  for (let s = 0; s < sessions; s += 1) {
    const chance = come[s]! * there[s]!;
    const off = known ? chance : 0;
    mean[s] = mean[s]! + people * chance;
    covariance[s * sessions + s] = covariance[s * sessions + s]! + people * chance * (1 - off);
    for (let t = s + 1; t < sessions; t += 1) {
      const later = come[t]! * there[t]!;
      const both = come[s]! * later;
      const index = s * sessions + t;
      covariance[index] = covariance[index]! + people * (both - off * later);
    }
  }
}
