import { Temporal } from "temporal-polyfill";

const WRITTEN = /^([01]\d|2[0-3]):[0-5]\d$/;

/** Reads "18:30" as a time of day; undefined for "24:00", "7:30" or "18:30:00". */
export function readPlainTime(text: string): Temporal.PlainTime | undefined {
  return WRITTEN.test(text) ? Temporal.PlainTime.from(text) : undefined;
}
