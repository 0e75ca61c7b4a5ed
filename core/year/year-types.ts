import type { Locale } from "#core/words";
import type { DateSpan } from "#kernels/calendar";
import type { Temporal } from "temporal-polyfill";
import type { PublicHoliday } from "./holidays/public-holiday.ts";
import type { DaysOff, LostLine } from "./lists/day-list-types.ts";

/** What is booked in a hall by its own calendar, in moments; whole days last from midnight to midnight there. */
export type Booking = {
  readonly title: string;
  readonly from: Temporal.ZonedDateTime;
  readonly end: Temporal.ZonedDateTime;
  readonly wholeDays: boolean;
};

export type YearHall = {
  readonly id: string;
  readonly name: string;
  readonly zone: string;
  readonly closed: readonly DaysOff[];
  readonly polling: boolean;
  /** what others have booked; her own hires are taken out */
  readonly booked: readonly Booking[];
};

export type Repeats =
  | { readonly kind: "weekly"; readonly weekday: number }
  | { readonly kind: "rule"; readonly rule: string };

/** Minutes from having to be there to the start, of the class, and from its end to leaving. */
export type ClassMinutes = { readonly before: number; readonly teach: number; readonly after: number };

export type YearClass = {
  readonly id: string;
  readonly name: string;
  readonly hall: YearHall;
  readonly start: Temporal.PlainTime;
  readonly minutes: ClassMinutes;
  readonly repeats: Repeats;
  /** the days of the year on which it can be */
  readonly span: DateSpan;
  readonly closed: readonly DaysOff[];
  readonly onPublicHolidays: boolean;
  readonly inSchoolHolidays: boolean;
};

export type Change = { readonly class: string; readonly date: Temporal.PlainDate } & (
  | {
      readonly kind: "move";
      readonly to: Temporal.PlainDate;
      readonly start: Temporal.PlainTime | null;
      readonly times: number;
    }
  | { readonly kind: "cancel"; readonly why: string }
  | { readonly kind: "extra"; readonly start: Temporal.PlainTime | null }
);

/** A year document that was read and found sound. Every class names a hall that is there. */
export type Year = {
  readonly span: DateSpan;
  readonly zone: string;
  readonly locale: Locale;
  readonly region: string;
  readonly holidays: readonly PublicHoliday[];
  readonly school: readonly DaysOff[];
  readonly timeOff: readonly DaysOff[];
  readonly elections: readonly Temporal.PlainDate[];
  readonly sick: number;
  readonly halls: readonly YearHall[];
  readonly classes: readonly YearClass[];
  readonly changes: readonly Change[];
  readonly edition: number;
  /** lines of pasted lists that gave nothing, each with the place of its list */
  readonly notUnderstood: readonly (LostLine & { readonly place: string })[];
};

/** Why there is no session on a date, the weightiest first. */
export const reasonKinds = [
  "cancelled",
  "public holiday",
  "time off",
  "class closed",
  "hall closed",
  "election",
  "hall booked",
  "school holiday",
] as const;
export type ReasonKind = (typeof reasonKinds)[number];
export type Reason = { readonly kind: ReasonKind; readonly why: string };

/** One dated meeting of a class. */
export type Session = {
  readonly class: YearClass;
  /** the day on which it would have been: what its calendar entry is called by, wherever it moves */
  readonly original: Temporal.PlainDate;
  readonly date: Temporal.PlainDate;
  /** what the clocks of the hall do with its start */
  readonly shown: "once" | "twice" | "never";
  /** she has to be there; it begins; it ends; she leaves */
  readonly access: Temporal.ZonedDateTime;
  readonly begins: Temporal.ZonedDateTime;
  readonly ends: Temporal.ZonedDateTime;
  readonly leaves: Temporal.ZonedDateTime;
  readonly change: "moved" | "extra" | null;
  /** how often it was moved */
  readonly times: number;
};

export type LostDate = { readonly date: Temporal.PlainDate; readonly reasons: readonly Reason[] };

export type ClassYearDates = {
  readonly class: YearClass;
  /** in the order of their dates */
  readonly sessions: readonly Session[];
  readonly lost: readonly LostDate[];
  /** how many dates it would have if nothing were changed or lost */
  readonly days: number;
};
