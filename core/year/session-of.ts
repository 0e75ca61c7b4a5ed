import { clockOn } from "#kernels/calendar";
import type { Temporal } from "temporal-polyfill";
import type { Session, YearClass } from "./year-types.ts";

type When = Pick<Session, "original" | "date" | "change" | "times"> & {
  readonly start: Temporal.PlainTime | null;
};

/**
 * A class on one day: 18:30 for 75 minutes with 20 before and 15 after is from 18:10 to 20:00. Lengths are elapsed
 * minutes: over a change of the clocks the end by the clock differs from the sum.
 */
export function sessionOf(one: YearClass, { start, ...when }: When): Session {
  const { shown, start: begins } = clockOn(when.date, start ?? one.start, one.hall.zone);
  const { before, teach, after } = one.minutes;
  const ends = begins.add({ minutes: teach });
  return {
    class: one,
    ...when,
    shown,
    access: begins.subtract({ minutes: before }),
    begins,
    ends,
    leaves: ends.add({ minutes: after }),
  };
}
