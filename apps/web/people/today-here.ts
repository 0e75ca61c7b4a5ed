import { Temporal } from "temporal-polyfill";

/** Today in the zone of the practice, as YYYY-MM-DD: what is sold or given back is dated so. */
export function todayHere(zone: string): string {
  return Temporal.Now.plainDateISO(zone).toString();
}

/** The date so many weeks before, or after where below nought. */
export function weeksBefore(date: string, weeks: number): string {
  return Temporal.PlainDate.from(date).subtract({ weeks }).toString();
}

/** The same day a year later. */
export function aYearAfter(date: string): string {
  return Temporal.PlainDate.from(date).add({ years: 1 }).toString();
}

/** Whole weeks from one date to another. */
export function weeksBetween(from: string, until: string): number {
  const { days } = Temporal.PlainDate.from(from).until(Temporal.PlainDate.from(until), {
    largestUnit: "days",
  });
  return Math.floor(days / 7);
}
