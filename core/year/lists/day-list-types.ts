import type { Locale } from "#core/words";
import type { DateSpan } from "#kernels/calendar";

/** Days off in a row, with the words that stand beside them: 26 to 30 October 2026, "Autumn half-term". */
export type DaysOff = DateSpan & { readonly why: string };

/** A line of a list that gave days off; line 1 is the first. */
export type UnderstoodLine = DaysOff & { readonly line: number };

/** A line that gave none, as it stands, and why. */
export type LostLine = { readonly line: number; readonly text: string; readonly says: string };

export type DayList = {
  readonly days: readonly UnderstoodLine[];
  readonly notUnderstood: readonly LostLine[];
};

/** The order of day and month, the year that a date without one falls in, and what days without words are called. */
export type ListContext = DateSpan & { readonly locale: Locale; readonly called: string };
