import { Temporal } from "temporal-polyfill";

/** Today where the practice is, as YYYY-MM-DD. */
export function todayIn(zone: string): string {
  return Temporal.Now.plainDateISO(zone).toString();
}
