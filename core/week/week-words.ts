import { clockText } from "#core/price";
import type { Binding } from "./conflict.ts";
import type { Candidate, Week } from "./week-types.ts";

export const WEEKDAYS = ["Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"];

export function dayName(weekday: number): string {
  return WEEKDAYS[weekday - 1] ?? String(weekday);
}

export function candidateAt({ candidates }: Week, at: number): Candidate {
  const found = candidates[at];
  if (found === undefined) throw new RangeError(`no candidate ${at}`);
  return found;
}

/** "10 classes", "1 class" */
export function counted(count: number, one: string, more = `${one}s`): string {
  return `${count} ${count === 1 ? one : more}`;
}

/** 1660 minutes are "27 h 40 min". */
export function hoursText(minutes: number): string {
  const hours = Math.floor(minutes / 60);
  const rest = minutes % 60;
  if (hours === 0) return `${rest} min`;
  return rest === 0 ? `${hours} h` : `${hours} h ${rest} min`;
}

/** "a", "a and b", "a, b and c"; with commas in them "a; b, the second; c" */
export function listed(words: readonly string[]): string {
  const last = words.at(-1) ?? "";
  // a name like “Tuesday evening, mixed” would fall apart between commas
  if (words.length > 1 && words.some((word) => word.includes(","))) return words.join("; ");
  return words.length < 2 ? last : `${words.slice(0, -1).join(", ")} and ${last}`;
}

/** A limit or a promise as it would be named across a table. */
export function bindingWords(week: Week, binding: Binding): string {
  if (binding.kind === "commitment") return commitmentWords(week, binding.at);
  if (binding.kind === "promise") return `the promise of ${candidateAt(week, binding.candidate).name}`;
  const { limits } = week;
  switch (binding.limit) {
    case "classesAWeek":
      return `${counted(limits.classesAWeek ?? 0, "class", "classes")} a week at most`;
    case "classesADay":
      return `${counted(limits.classesADay ?? 0, "class", "classes")} a day at most`;
    case "backToBack":
      return `${counted(limits.backToBack ?? 0, "class", "classes")} at most without a break`;
    case "evenings":
      return `${counted(limits.evenings ?? 0, "evening")} at most, from ${clockText(limits.eveningFrom)}`;
    case "freeDays":
      return `${counted(limits.freeDays, "free day")} at least`;
    case "restMinutes":
      return `${hoursText(limits.restMinutes)} of rest from one day to the next`;
  }
}

/** "School run on Wednesday, 15:00 to 16:30" */
function commitmentWords({ commitments }: Week, at: number): string {
  const one = commitments[at];
  if (one === undefined) throw new RangeError(`no commitment ${at}`);
  return `${one.name} on ${dayName(one.weekday)}, ${clockText(one.from)} to ${clockText(one.until)}`;
}
