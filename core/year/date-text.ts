import type { Locale } from "#core/words";
import type { Temporal } from "temporal-polyfill";
import { monthName, weekdayName } from "./lists/words-of-dates.ts";

/** "Tuesday 26 January 2027", in the United States "Tuesday, January 26, 2027". */
export function dateText(date: Temporal.PlainDate, locale: Locale): string {
  const day = weekdayName(date.dayOfWeek);
  return locale === "en-US" ? `${day}, ${dayText(date, locale)}` : `${day} ${dayText(date, locale)}`;
}

/** "26 January 2027", in the United States "January 26, 2027". */
export function dayText(date: Temporal.PlainDate, locale: Locale): string {
  const month = monthName(date.month);
  return locale === "en-US" ? `${month} ${date.day}, ${date.year}` : `${date.day} ${month} ${date.year}`;
}

/** "18:30", in the United States "6:30 pm". */
export function clockOf(moment: Temporal.ZonedDateTime, locale: Locale): string {
  const { hour } = moment;
  const minute = String(moment.minute).padStart(2, "0");
  if (locale !== "en-US") return `${String(hour).padStart(2, "0")}:${minute}`;
  return `${hour % 12 === 0 ? 12 : hour % 12}:${minute} ${hour < 12 ? "am" : "pm"}`;
}

/** "18:30", as documents write it. */
export function wallClock(moment: Temporal.ZonedDateTime): string {
  return moment.toPlainTime().toString({ smallestUnit: "minute" });
}

/** "a", "a and b", "a, b and c". */
export function listText(words: readonly string[]): string {
  const last = words.at(-1) ?? "";
  return words.length < 2 ? last : `${words.slice(0, -1).join(", ")} and ${last}`;
}

/** "1 session", "12 sessions". */
export function countText(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`;
}
