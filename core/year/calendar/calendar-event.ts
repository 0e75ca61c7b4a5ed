import type { Temporal } from "temporal-polyfill";

/** A moment as a calendar file has it: a whole day, a time in UTC, in a zone, or by whatever clock hangs there. */
export type CalendarTime =
  | { readonly kind: "day"; readonly date: Temporal.PlainDate }
  | { readonly kind: "utc"; readonly at: Temporal.Instant }
  | { readonly kind: "zoned"; readonly wall: Temporal.PlainDateTime; readonly zone: string }
  | { readonly kind: "floating"; readonly wall: Temporal.PlainDateTime };

/** A VEVENT of a calendar file (RFC 5545, 3.6.1), as far as it says when something is. */
export type CalendarEvent = {
  readonly uid: string;
  readonly title: string;
  readonly start: CalendarTime;
  /** the end, or how long it lasts ("PT1H30M"); null for one whole day, or for no time at all */
  readonly end: CalendarTime | null;
  readonly duration: string | null;
  readonly rule: string | null;
  readonly also: readonly CalendarTime[];
  readonly without: readonly CalendarTime[];
  /** which of the repeated ones this one stands for */
  readonly stands: CalendarTime | null;
  /** cancelled, or marked as taking no time */
  readonly free: boolean;
  /** the line of the file on which it begins, from 1 */
  readonly line: number;
};

/** What could not be read in a file, told and passed over. */
export type CalendarNote = { readonly line: number; readonly says: string };
