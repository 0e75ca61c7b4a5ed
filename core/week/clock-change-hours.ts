import { clockChanges } from "#kernels/calendar";
import { type Problem, problem } from "#core/words";
import { Temporal } from "temporal-polyfill";
import type { Candidate } from "./week-types.ts";
import { dayName } from "./week-words.ts";

/** Minutes since midnight of a weekday that the clocks skip on one date of a year or show twice. */
type Hour = { readonly weekday: number; readonly from: number; readonly until: number };

/**
 * Classes in an hour that the clocks skip or show twice, by name: more often a slip of twelve hours than meant.
 * Problem: "clock-change-hour".
 */
export function clockChangeProblems(
  candidates: readonly Candidate[],
  zone: string | undefined,
): readonly Problem[] {
  if (zone === undefined) return [];
  const hours = changedHours(zone);
  return candidates.flatMap(({ name, weekday, start, end }, at) => {
    const hit = hours.some((it) => it.weekday === weekday && it.from < end && it.until > start);
    if (!hit) return [];
    const says = `${name} on ${dayName(weekday)} lies in an hour that the clocks of ${zone} skip or show twice when they change.`;
    const next = "Look at its time, which may be meant twelve hours later; else move it by an hour.";
    return [problem("clock-change-hour", `candidates[${at}].start`, says, next)];
  });
}

/** By the changes of two years, which hold for as long as a zone keeps its rule. */
function changedHours(zone: string): readonly Hour[] {
  const [from, until] = [Temporal.PlainDate.from("2026-01-01"), Temporal.PlainDate.from("2027-12-31")];
  return clockChanges(from, until, zone).map(({ at, minutes }): Hour => {
    const after = at.toZonedDateTimeISO(zone);
    const wall = after.hour * 60 + after.minute;
    const other = wall - minutes;
    return { weekday: after.dayOfWeek, from: Math.min(wall, other), until: Math.max(wall, other) };
  });
}
