import { readPlainDate } from "#kernels/calendar";
import type { Temporal } from "temporal-polyfill";
import type { DayList, ListContext, LostLine, UnderstoodLine } from "./day-list-types.ts";
import { dateOfWritten, isoText } from "./date-of-written.ts";
import { findDates, type WrittenDate } from "./find-dates.ts";

/**
 * Reads a pasted list of days off, a line for each: "Autumn half-term: Monday 26 to Friday 30 October 2026",
 * "26/10/2026 - 30/10/2026 floor resealed", "2026-12-25". Empty lines and lines that begin with # are passed over.
 * Every other line either gives days or is told with why it gives none: nothing is dropped in silence.
 */
export function readDayList(text: string, context: ListContext): DayList {
  const days: UnderstoodLine[] = [];
  const notUnderstood: LostLine[] = [];
  for (const [at, written] of text.split(/\r\n|\r|\n/).entries()) {
    const line = written.replaceAll("\uE000", "").trim().slice(0, LONGEST_LINE);
    if (line === "" || line.startsWith("#")) continue;
    const read = readLine(line, context);
    if (typeof read === "string") notUnderstood.push({ line: at + 1, text: line, says: read });
    else days.push({ ...read, line: at + 1 });
  }
  return { days, notUnderstood };
}

const LONGEST_LINE = 300;

/** The days of a line, or why it gives none. */
function readLine(line: string, context: ListContext): Omit<UnderstoodLine, "line"> | string {
  const { dates, words } = findDates(line, context.locale);
  const [first, second, third] = dates;
  if (first === undefined) return "there is no date in it.";
  if (third !== undefined) return "there are more than two dates in it; write each on a line of its own.";
  if (second === undefined && /\bweeks?\b|\bw\/[cb]\b/i.test(line))
    return weekFrom(first, line, words, context);
  const last = second ?? first;
  const until = dateOfWritten(last, context);
  if (typeof until === "string") return until;
  const from = dateOfWritten(withYearOf(first, last, until), context);
  if (typeof from === "string") return from;
  const length = from.until(until).days + 1;
  if (length < 1) return `it ends on ${String(until)}, before it begins on ${String(from)}.`;
  if (length > LONGEST_SPAN) return `from ${String(from)} to ${String(until)} is more than a year.`;
  if (/\b(?:mon|tue|wed|thu|fri|sat|sun)[a-z]*\.?\s+\d/i.test(words))
    return "a day of the week has a number beside it that cannot be read as a date.";
  return aboutTerm(line, length) ?? { from, until, why: words === "" ? context.called : words };
}

/** "Week commencing 26 October" is seven days; how long "two weeks from 26 October" are she has to say by the last day. */
function weekFrom(
  first: WrittenDate,
  line: string,
  words: string,
  context: ListContext,
): Omit<UnderstoodLine, "line"> | string {
  const isWhole = /\bw\/[cb]\b|\bweek (?:commencing|beginning|of|from|starting)\b/i.test(line);
  if (!isWhole) return "it tells of weeks but has one date; write the last day too.";
  const from = dateOfWritten(first, context);
  if (typeof from === "string") return from;
  const why = words.replace(/\(?\b(?:w\/[cb]|week (?:commencing|beginning|of|from|starting))\)?/i, "").trim();
  return { from, until: from.add({ days: 6 }), why: why === "" ? context.called : why };
}

const LONGEST_SPAN = 366;
// Christmas lasts two weeks; months between the two mean that they were written the wrong way round
const LONGEST_OVER_NEW_YEAR = 60;

/** "26 October to 30 October 2026": the first is of the same year; "21 December to 3 January 2027", of the one before. */
function withYearOf(first: WrittenDate, last: WrittenDate, until: Temporal.PlainDate): WrittenDate {
  if (first.year !== undefined || first === last) return first;
  const before = readPlainDate(isoText(until.year - 1, first));
  const days = before === undefined ? 0 : before.until(until).days;
  return { ...first, year: days > 0 && days <= LONGEST_OVER_NEW_YEAR ? until.year - 1 : until.year };
}

// a half-term has nine days with its weekends, Christmas and Easter sixteen
const LONGEST_BREAK_OF_A_TERM = 16;

/** A list of term dates has the terms in it too, which are the days on which there is school. */
function aboutTerm(line: string, days: number): string | null {
  if (!/\b(?:term|semester|trimester)\b/i.test(line)) return null;
  const isBreak = /half[ -]?term|holiday|break|vacation|closed/i.test(line);
  if (isBreak && days <= LONGEST_BREAK_OF_A_TERM) return null;
  return "it seems to tell of a term, not of days off; write the days off instead.";
}
