import { good, readDocument, type Result } from "#core/words";
import { type CalendarEntry, calendarEntries } from "./calendar/calendar-entries.ts";
import { readYear } from "./read-year.ts";
import { yearDocumentSchema } from "./year-document.ts";
import { yearFound } from "./year-found.ts";
import { type YearCalendarJson, yearJson } from "./year-json.ts";
import { type YearPicture, yearPicture } from "./picture/year-picture.ts";

export type YearAnswer = {
  readonly json: YearCalendarJson;
  readonly picture: YearPicture;
  readonly entries: readonly CalendarEntry[];
  readonly unused: readonly string[];
};

/**
 * Reads a year document and answers its real dates: teaching weeks, sessions of each class, why each missing date is
 * missing, what clashes; the same as a picture, and as entries of a calendar whose ids are made her own by `practice`.
 * Problems: those of the document.
 */
export function yearAnswer(input: unknown, practice = "hallful"): Result<YearAnswer> {
  const read = readDocument(yearDocumentSchema, input);
  if (!read.ok) return read;
  const year = readYear(read.value.value);
  if (!year.ok) return year;
  const found = yearFound(year.value);
  return good({
    json: yearJson(year.value, found),
    picture: yearPicture(year.value, found),
    entries: calendarEntries(year.value, practice),
    unused: read.value.unused,
  });
}
