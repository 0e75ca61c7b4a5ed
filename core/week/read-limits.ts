import { bad, good, problem, readMinutes, type Result, together } from "#core/words";
import { readClock } from "./read-candidates.ts";
import { readWhole } from "./read-whole.ts";
import type { WeekDocument } from "./week-document.ts";
import type { WeekLimits } from "./week-types.ts";

/** Problems: "cap-nought", "week-count", "rest-out-of-range", "time-unreadable" and those of minutes. */
export function readLimits(limits: WeekDocument["limits"]): Result<WeekLimits> {
  return together({
    classesAWeek: readCap(limits.classesAWeek, "classesAWeek", "classes a week", 100),
    classesADay: readCap(limits.classesADay, "classesADay", "classes a day", 20),
    backToBack: readCap(limits.backToBack, "backToBack", "classes in a row", 20),
    evenings: readEvenings(limits.evenings),
    freeDays: readWhole(limits.freeDays, "limits.freeDays", "free days", 0, 6),
    restMinutes: readRest(limits.restHours),
    breakMinutes: readMinutes(limits.breakMinutes, "limits.breakMinutes"),
    eveningFrom: readClock(limits.eveningFrom, "limits.eveningFrom"),
    buffer: readMinutes(limits.buffer, "limits.buffer"),
  });
}

/** No evening at all is a week that somebody may want; no class at all is none. */
function readEvenings(evenings: number | null): Result<number | null> {
  return evenings === null ? good(null) : readWhole(evenings, "limits.evenings", "evenings a week", 0, 7);
}

function readCap(cap: number | null, key: string, what: string, most: number): Result<number | null> {
  if (cap === null) return good(null);
  if (cap !== 0) return readWhole(cap, `limits.${key}`, what, 1, most);
  const says = `A cap of 0 ${what} leaves no week to plan.`;
  return bad(problem("cap-nought", `limits.${key}`, says, "Give 1 or more, or null for no such limit."));
}

/** To the minute; beyond 23 hours two days in a row could hold nothing. */
function readRest(hours: number): Result<number> {
  if (hours >= 0 && hours <= 23) return good(Math.round(hours * 60));
  const says = `${hours} hours of rest cannot be meant.`;
  return bad(problem("rest-out-of-range", "limits.restHours", says, "Give hours from 0 to 23."));
}
