import { writeCalendarFile } from "#adapters/calendar";
import { drawingSvg, yearAnswer, type YearDocumentInput, yearDrawing, type YearPicture } from "#core/year";
import { good, type Result } from "#core/words";
import { Temporal } from "temporal-polyfill";

/** The sessions of a year as the text of an iCalendar file; `practice` makes their ids her own. */
export function calendarFile(document: YearDocumentInput, practice: string, name: string): Result<string> {
  const read = yearAnswer(document, practice);
  if (!read.ok) return read;
  const made = Temporal.Instant.fromEpochMilliseconds(Date.now());
  return good(writeCalendarFile(read.value.entries, { name: `Classes of ${name}`, made }));
}

/** The whole year on one sheet, as the text of an SVG file. */
export function pictureFile(picture: YearPicture): string {
  const words = picture.months.flatMap((month) => [month.title, ...month.words]);
  return drawingSvg(yearDrawing(picture), picture.title, words);
}
