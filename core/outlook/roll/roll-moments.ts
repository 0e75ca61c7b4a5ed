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
  /** the spread of a luck about 1 that all people of one evening share, like rain or illness; none when left out */
  readonly luck?: number;
};

/**
 * Mean and covariance of the people who want to come, session by session; `covariance[s * n + t]`, s ≤ t. Where
 * newcomers were counted it is the others alone: nothing is uncertain about those. The variance of a session is that
 * before its own evening's luck, which `withLuck` adds.
 */
export type RollMoments = {
  readonly sessions: number;
  readonly mean: Float64Array;
  readonly covariance: Float64Array;
  /** the variance of each evening's luck, about 1 */
  readonly luck: Float64Array;
};

/**
 * How many want to come to each session, exactly to the second moment. Newcomers arrive Poisson(λ·season) and are
 * there at once; each stays with r, is still there k sessions later with S(k), and comes with a·season, at most 1.
 * So the newcomers of one session, thinned, are independent Poisson counts at every later one, demand is Poisson with
 * the sum of their means, and two sessions share those who come to both: that is their covariance. Known people are
 * binomial: the product of their chances is taken off. A luck W of mean 1 that an evening's people share multiplies
 * all their chances: newcomers are a mixture of Poisson counts, and whoever is new on a lucky evening comes again, so
 * that later evenings follow it. Exact whatever the shape of W, as long as a·season·W stays below 1. Method: methods 5.
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
    luck: come.map((chance) => luckOf(chance, plan.luck ?? 0)),
  };
  for (const group of plan.before) addBefore(group, still, come, moments);
  addNewcomers(rates, plan, still, come, moments);
  return moments;
}

/** A chance of 0.8 times its luck stays a chance: its square is on average no more than itself. */
function luckOf(chance: number, spread: number): number {
  return chance > 0 ? Math.min(spread ** 2, (1 - chance) / chance) : spread ** 2;
}

/**
 * The variance of a session once its evening's luck is taken in: V + σ²·E[D(D − 1)], for a luck that thins D leaves
 * its factorial moments as they are but for W².
 */
export function withLuck(variance: number, mean: number, luck: number): number {
  return variance + luckAdds(variance, mean, luck);
}

export function luckAdds(variance: number, mean: number, luck: number): number {
  return luck * Math.max(0, variance - mean + mean * mean);
}

// The two loops below run a thousand times for one posterior, over every pair of sessions and every cohort before
// them: they are kept plain, without a call or a check inside.

function addNewcomers(
  { newcomers, stays }: RollRates,
  { seasons, newcomers: counted, more = [] }: RollPlan,
  still: Float64Array,
  come: Float64Array,
  { sessions, mean, covariance, luck }: RollMoments,
): void {
  const arriving = Float64Array.from(
    seasons,
    (season, at) => counted[at] ?? newcomers * season + (more[at] ?? 0),
  );
  const uncertain = Float64Array.from(seasons, (_, at) => (typeof counted[at] === "number" ? 0 : 1));
  // of a counted cohort the product of the chances is off, for it is binomial; one that luck made vary has more of it
  const tied = arriving.map((people, at) => (uncertain[at] === 1 ? luck[at]! * people : -1));
  const shared = new Float64Array(sessions);
  for (let s = 0; s < sessions; s += 1) {
    const comes = come[s]! * stays;
    let expected = 0;
    let own = 0;
    for (let u = 0; u < s; u += 1) {
      const people = arriving[u]!;
      const there = still[s - u]!;
      expected += people * there;
      own += people * there * (1 + tied[u]! * comes * there);
      // whoever comes later was still there at s; whether she came to s is a chance of its own
      shared[u] = people * (1 + tied[u]! * stays * there);
    }
    const fresh = arriving[s]! * uncertain[s]!;
    mean[s] = mean[s]! + fresh + expected * comes;
    covariance[s * sessions + s] = covariance[s * sessions + s]! + fresh + own * comes;
    // the newcomers of a lucky evening are many where its regulars are
    const followed = fresh * stays * (1 + luck[s]! * mean[s]!);
    for (let t = s + 1; t < sessions; t += 1) {
      let both = 0;
      for (let u = 0; u < s; u += 1) both += shared[u]! * still[t - u]!;
      // the newcomers of s themselves come to s for sure
      const index = s * sessions + t;
      covariance[index] = covariance[index]! + come[t]! * (comes * both + followed * still[t - s]!);
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
