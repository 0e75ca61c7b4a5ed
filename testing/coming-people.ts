import betaQuantile from "@stdlib/stats-base-dists-beta-quantile";
import gammaQuantile from "@stdlib/stats-base-dists-gamma-quantile";
import { uniformFloat64 } from "pure-rand/distribution/uniformFloat64";
import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";

/** Invented people who come as the model says; the days of each after the first visit, in whole days. */
export type ComingPerson = { readonly firstDay: number; readonly days: readonly number[] };

type Rates = { readonly r: number; readonly alpha: number; readonly a: number; readonly b: number };

/**
 * People drawn one by one from BG/NBD, rates a week: each begins in the first `newFor` days and is watched until
 * the day `until`. Seeded, so that a test and a bench see the same ones.
 */
export function comingPeople(
  { r, alpha, a, b }: Rates,
  people: number,
  span: { readonly newFor: number; readonly until: number },
  seed: number,
): readonly ComingPerson[] {
  const random = xoroshiro128plus(seed);
  const uniform = (): number => Math.max(Number.MIN_VALUE, uniformFloat64(random));
  return Array.from({ length: people }, () => {
    const firstDay = Math.floor(uniform() * span.newFor);
    const rate = gammaQuantile(uniform(), r, alpha);
    const stops = betaQuantile(uniform(), a, b);
    const days: number[] = [];
    const next = (day: number): number => day + (-Math.log(uniform()) / rate) * 7;
    // a rate too small for a double is never: the next day is infinite
    for (let day = next(firstDay); day <= span.until; day = next(day)) {
      days.push(Math.round(day));
      if (uniform() < stops) break;
    }
    return { firstDay, days: [...new Set(days)].filter((it) => it > firstDay && it <= span.until) };
  });
}

type WeeklyRates = {
  readonly alpha: number;
  readonly beta: number;
  readonly gamma: number;
  readonly delta: number;
};

/** The weeks in which each of some people came to a weekly class, drawn one by one from BG/BB; first weeks spread evenly. */
export function weeklyPeople(
  { alpha, beta, gamma, delta }: WeeklyRates,
  people: number,
  span: { readonly newFor: number; readonly weeks: number },
  seed: number,
): readonly (readonly number[])[] {
  const random = xoroshiro128plus(seed);
  const uniform = (): number => Math.max(Number.MIN_VALUE, uniformFloat64(random));
  return Array.from({ length: people }, () => {
    const first = Math.floor(uniform() * span.newFor);
    const comes = betaQuantile(uniform(), alpha, beta);
    const stops = betaQuantile(uniform(), gamma, delta);
    const weeks = [first];
    for (let week = first + 1; week < span.weeks && uniform() >= stops; week += 1) {
      if (uniform() < comes) weeks.push(week);
    }
    return weeks;
  });
}
