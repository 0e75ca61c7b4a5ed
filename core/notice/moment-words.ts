import type { Writer } from "#core/words";
import { inZone } from "./instants.ts";

/** "Tuesday 24 November 2026 at 18:30", by the clock of the hall; seconds are left out. */
export function momentWords(instant: string, zone: string, writer: Writer): string {
  const moment = inZone(instant, zone);
  return `${writer.day(moment.toPlainDate().toString())} at ${writer.time(clockOf(instant, zone))}`;
}

export function clockOf(instant: string, zone: string): string {
  return inZone(instant, zone).toPlainTime().toString({ smallestUnit: "minute" });
}

const HOUR = 60;
const DAY = 24 * HOUR;

/** 1 → "1 minute", 90 → "1 hour 30 minutes", 3000 → "2 days 2 hours": the two largest units. */
export function spanWords(minutes: number): string {
  if (minutes < 1) return "less than a minute";
  const parts = [
    counted(Math.floor(minutes / DAY), "day"),
    counted(Math.floor((minutes % DAY) / HOUR), "hour"),
    counted(minutes % HOUR, "minute"),
  ].filter((part) => part !== "");
  return parts.slice(0, 2).join(" ");
}

function counted(count: number, unit: string): string {
  if (count === 0) return "";
  return count === 1 ? `1 ${unit}` : `${count} ${unit}s`;
}
