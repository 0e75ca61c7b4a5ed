import { spanCovering } from "#kernels/calendar";
import { Temporal } from "temporal-polyfill";
import { countText, listText } from "../date-text.ts";
import { monthName } from "../lists/words-of-dates.ts";
import type { YearFound } from "../year-found.ts";
import type { ClassYearDates, Year } from "../year-types.ts";

/** What a day of the picture is marked with beside its sessions. */
export type DayMark = "public holiday" | "time off" | "school holiday";

export type PictureDay = {
  readonly date: string;
  readonly day: number;
  /** 0 is the first day of the week, Monday, in the United States Sunday */
  readonly column: number;
  /** the week of the month, 0 is the first */
  readonly row: number;
  /** letters of the classes that are on that day, and of those that fall out; a day outside the year has none */
  readonly held: readonly string[];
  readonly lost: readonly string[];
  readonly marks: readonly DayMark[];
};

export type PictureMonth = {
  /** "2026-09" */
  readonly month: string;
  readonly title: string;
  readonly days: readonly PictureDay[];
  /** the same in words */
  readonly words: readonly string[];
};

/** A year as a sheet of months: every class has a letter, every day its sessions and what takes them. */
export type YearPicture = {
  readonly title: string;
  readonly weekdays: readonly string[];
  readonly classes: readonly { readonly letter: string; readonly name: string; readonly sessions: number }[];
  readonly months: readonly PictureMonth[];
};

const DAYS = ["Mo", "Tu", "We", "Th", "Fr", "Sa", "Su"];

export function yearPicture(year: Year, found: YearFound): YearPicture {
  const sunday = year.locale === "en-US";
  const lettered = found.classes.map((it, at) => ({
    letter: letterOf(at),
    it,
    held: new Set(it.sessions.map(({ date }) => date.toString())),
    lost: new Set(it.lost.map(({ date }) => date.toString())),
  }));
  return {
    title: titleOf(year),
    weekdays: sunday ? [...DAYS.slice(6), ...DAYS.slice(0, 6)] : DAYS,
    classes: lettered.map(({ letter, it }) => ({
      letter,
      name: it.class.name,
      sessions: it.sessions.length,
    })),
    months: monthsOf(year).map((month) => monthOf(month, year, lettered, sunday)),
  };
}

/** "A" to "Z", then "A2". */
function letterOf(at: number): string {
  const letter = String.fromCodePoint(65 + (at % 26));
  return at < 26 ? letter : `${letter}${Math.floor(at / 26) + 1}`;
}

function titleOf({ span }: Year): string {
  const [from, until] = [span.from, span.until].map((it) => `${monthName(it.month)} ${it.year}`);
  return from === until ? (from ?? "") : `${from ?? ""} to ${until ?? ""}`;
}

function monthsOf({ span }: Year): readonly Temporal.PlainYearMonth[] {
  const first = span.from.toPlainYearMonth();
  const count = first.until(span.until.toPlainYearMonth(), { largestUnit: "month" }).months + 1;
  return Array.from({ length: count }, (_, at) => first.add({ months: at }));
}

type Lettered = readonly {
  readonly letter: string;
  readonly it: ClassYearDates;
  readonly held: ReadonlySet<string>;
  readonly lost: ReadonlySet<string>;
}[];

function monthOf(
  month: Temporal.PlainYearMonth,
  year: Year,
  lettered: Lettered,
  sunday: boolean,
): PictureMonth {
  const first = month.toPlainDate({ day: 1 });
  const offset = columnOf(first, sunday);
  const days = Array.from({ length: month.daysInMonth }, (_, at) => {
    const date = first.add({ days: at });
    return {
      date: date.toString(),
      day: at + 1,
      column: columnOf(date, sunday),
      row: Math.floor((at + offset) / 7),
      held: lettered.filter(({ held }) => held.has(date.toString())).map(({ letter }) => letter),
      lost: lettered.filter(({ lost }) => lost.has(date.toString())).map(({ letter }) => letter),
      marks: marksOn(date, year),
    };
  });
  const title = `${monthName(month.month)} ${month.year}`;
  return { month: month.toString(), title, days, words: wordsOf(month, lettered) };
}

function columnOf(date: Temporal.PlainDate, sunday: boolean): number {
  return sunday ? date.dayOfWeek % 7 : date.dayOfWeek - 1;
}

function marksOn(date: Temporal.PlainDate, { span, holidays, timeOff, school }: Year): readonly DayMark[] {
  if (spanCovering([span], date) === undefined) return [];
  return [
    ...(holidays.some((it) => it.date.equals(date)) ? (["public holiday"] as const) : []),
    ...(spanCovering(timeOff, date) === undefined ? [] : (["time off"] as const)),
    ...(spanCovering(school, date) === undefined ? [] : (["school holiday"] as const)),
  ];
}

/** "A, Tuesday evening: 1, 8, 15, 22 and 29; not on 7 (Labor Day)." for each class that has a date in the month. */
function wordsOf(month: Temporal.PlainYearMonth, lettered: Lettered): readonly string[] {
  const inMonth = (date: Temporal.PlainDate): boolean => date.toPlainYearMonth().equals(month);
  return lettered.flatMap(({ letter, it }) => {
    const held = it.sessions.filter(({ date }) => inMonth(date)).map(({ date }) => String(date.day));
    const lost = it.lost
      .filter(({ date }) => inMonth(date))
      .map(({ date, reasons }) => `${date.day} (${reasons[0]?.why ?? ""})`);
    if (held.length + lost.length === 0) return [];
    const on =
      held.length === 0 ? "no session" : `${countText(held.length, "session")}, on ${listText(held)}`;
    const not = lost.length === 0 ? "" : `; not on ${listText(lost)}`;
    return [`${letter}, ${it.class.name}: ${on}${not}.`];
  });
}
