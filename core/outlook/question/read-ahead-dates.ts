import {
  bad,
  good,
  type Problem,
  problem,
  readDate,
  type Result,
  together,
  togetherInOrder,
} from "#core/words";
import { spanCovering, weeklyDates } from "#kernels/calendar";
import { Temporal } from "temporal-polyfill";
import { readCount } from "../read-count.ts";
import type { OutlookDocument } from "./outlook-document.ts";

/** Two years of a class twice a week; who looks further looks into mist. */
const MOST_AHEAD = 208;

/**
 * The sessions ahead, by date and in order; null for an ordinary week without one. Problems: "date-unreadable",
 * "weekday-unknown", "year-backwards", "closure-backwards", "ahead-too-long", "ahead-none", those of counts.
 */
export function readAheadDates(document: OutlookDocument): Result<readonly (Temporal.PlainDate | null)[]> {
  const { year, dates, sessionsAhead } = document;
  if (dates !== undefined) return readList(dates);
  if (year !== undefined) return readYear(year);
  const count = readCount(sessionsAhead, "sessionsAhead", "sessions ahead", { least: 1, most: MOST_AHEAD });
  return count.ok ? good(Array.from({ length: count.value }, () => null)) : count;
}

function readList(dates: readonly string[]): Result<readonly Temporal.PlainDate[]> {
  if (dates.length === 0) return bad(noneAhead("dates"));
  if (dates.length > MOST_AHEAD) return bad(tooLong(dates.length, "dates"));
  const read = togetherInOrder(dates.map((date, at) => readDate(date, `dates[${at}]`)));
  return read.ok ? good(read.value.toSorted((one, other) => Temporal.PlainDate.compare(one, other))) : read;
}

type Year = NonNullable<OutlookDocument["year"]>;

function readYear(year: Year): Result<readonly Temporal.PlainDate[]> {
  const read = together({
    from: readDate(year.from, "year.from"),
    until: readDate(year.until, "year.until"),
    weekday: readWeekday(year.weekday),
    closures: togetherInOrder(year.closures.map(readClosure)),
  });
  if (!read.ok) return read;
  const { from, until, weekday, closures } = read.value;
  if (Temporal.PlainDate.compare(from, until) > 0)
    return bad(backwards("year-backwards", "year", "The year"));
  // far more weeks than are looked ahead need not be counted one by one
  if (from.until(until).days > 7 * 4 * MOST_AHEAD) return bad(tooLong(null, "year"));
  const open = weeklyDates(from, until, weekday).filter((date) => spanCovering(closures, date) === undefined);
  if (open.length === 0) return bad(noneAhead("year"));
  return open.length > MOST_AHEAD ? bad(tooLong(open.length, "year")) : good(open);
}

function readWeekday(weekday: number): Result<number> {
  if (Number.isInteger(weekday) && weekday >= 1 && weekday <= 7) return good(weekday);
  const next = "Give a whole number: 1 is Monday, 7 is Sunday.";
  return bad(problem("weekday-unknown", "year.weekday", `There is no weekday ${weekday}.`, next));
}

function readClosure({ from, until }: Year["closures"][number], at: number) {
  const place = `year.closures[${at}]`;
  const read = together({
    from: readDate(from, `${place}.from`),
    until: readDate(until, `${place}.until`),
  });
  if (!read.ok || Temporal.PlainDate.compare(read.value.from, read.value.until) <= 0) return read;
  return bad(backwards("closure-backwards", place, "A closure"));
}

function backwards(code: string, place: string, what: string): Problem {
  return problem(code, place, `${what} ends before it begins.`, "Put the earlier day into “from”.");
}

function noneAhead(place: string): Problem {
  const next = "Give the dates on which the class is planned, or leave it out for forty ordinary weeks.";
  return problem("ahead-none", place, "There is no session ahead.", next);
}

function tooLong(count: number | null, place: string): Problem {
  const many = count === null ? "Decades of sessions" : `${count} sessions`;
  return problem(
    "ahead-too-long",
    place,
    `${many} are too many to look ahead.`,
    `Give ${MOST_AHEAD} at most.`,
  );
}
