import { type CountedWeek, countWeek } from "./check-week.ts";
import type { Week } from "./week-types.ts";

export type SoundWeek = CountedWeek & { readonly chosen: readonly number[] };

/** Every choice that keeps to the limits, by trying all 2^n: for tests, up to a dozen candidates. */
export function everyWeek(week: Week): readonly SoundWeek[] {
  const { length } = week.candidates;
  return Array.from({ length: 2 ** length }, (_, choice) =>
    week.candidates.flatMap((_one, at) => (((choice >> at) & 1) === 1 ? [at] : [])),
  )
    .map((chosen) => ({ chosen, ...countWeek(week, chosen) }))
    .filter(({ faults }) => faults.length === 0);
}
