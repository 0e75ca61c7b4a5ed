import { dayNumber } from "#kernels/calendar";

/**
 * A date in one of the ways people and programs write them, read both ways round: "05/04/2027" is 5 April with
 * the day first and 4 May with the month first; "25/04/2027" only the one; "5 Apr 27" the same in both.
 * Days are numbered from 1970-01-01.
 */
export type DateReading = {
  readonly dayFirst: number | undefined;
  readonly monthFirst: number | undefined;
};

const YEAR_FIRST = /^(\d{4})([-/.]?)(\d{2})\2(\d{2})$/;
const YEAR_FIRST_LOOSE = /^(\d{4})[-/.] ?(\d{1,2})[-/.] ?(\d{1,2})\.?$/;
const THREE_NUMBERS = /^(\d{1,2})(?:[-/.] ?| )(\d{1,2})(?:[-/.] ?| )(\d{4}|\d{2})$/;
const NAMED_DAY_FIRST =
  /^(\d{1,2})(?:st|nd|rd|th|er|\.)?[-/ ]*(?:de )?(\p{L}{3,10})\.?,?[-/ ]*(?:de )?(\d{4}|\d{2})$/u;
const NAMED_MONTH_FIRST = /^(\p{L}{3,10})\.?[-/ ]*(\d{1,2})(?:st|nd|rd|th)?,?[-/ ]+(\d{4}|\d{2})$/u;

// by their first letters, in some languages
const WEEKDAY_BEFORE =
  /^(?:mon?|tue|wed|thu|fri?|sat?|sun|di|mi|do|so|lun|mar|mer|jeu|ven|sam|dim|mié|jue|vie|sáb|dom)\p{L}*\.?,? +/iu;
const TIME_BEHIND = /[T ,]+\d{1,2}[:.h]\d{2}.*$/;

/** undefined where no way of reading gives a day of the calendar between 1950 and 2100. */
export function readAnyDate(text: string): DateReading | undefined {
  const spaced = text
    .slice(0, 60)
    .replaceAll(/[\s\u00a0]+/g, " ")
    .trim();
  const written = spaced.replace(TIME_BEHIND, "");
  // “Mar 5 2027” is March, “mar 5 avril” a Tuesday
  return readWritten(written) ?? readWritten(written.replace(WEEKDAY_BEFORE, ""));
}

function readWritten(written: string): DateReading | undefined {
  const alone = YEAR_FIRST.exec(written) ?? YEAR_FIRST_LOOSE.exec(written);
  if (alone !== null) {
    const parts = alone.length === 5 ? [alone[1], alone[3], alone[4]] : [alone[1], alone[2], alone[3]];
    return same(dayOf(parts[0], parts[1], parts[2]));
  }
  const three = THREE_NUMBERS.exec(written);
  if (three !== null) return readThree(three[1] ?? "", three[2] ?? "", three[3] ?? "");
  const named = NAMED_DAY_FIRST.exec(written);
  if (named !== null) return same(dayOf(named[3], monthNamed(named[2]), named[1]));
  const turned = NAMED_MONTH_FIRST.exec(written);
  return turned === null ? undefined : same(dayOf(turned[3], monthNamed(turned[1]), turned[2]));
}

function readThree(first: string, second: string, last: string): DateReading | undefined {
  // 99-01-31 can only begin with its year
  if (last.length === 2 && Number(first) > 31) return same(dayOf(first, second, last));
  const dayFirst = dayOf(last, second, first);
  const monthFirst = dayOf(last, first, second);
  return dayFirst === undefined && monthFirst === undefined ? undefined : { dayFirst, monthFirst };
}

function same(day: number | undefined): DateReading | undefined {
  return day === undefined ? undefined : { dayFirst: day, monthFirst: day };
}

function dayOf(year = "", month: string | number = "", day = ""): number | undefined {
  const whole = year.length === 2 ? Number(year) + (Number(year) < 80 ? 2000 : 1900) : Number(year);
  if (!(whole >= 1950 && whole <= 2100)) return undefined;
  return dayNumber(whole, Number(month), Number(day));
}

// The first letters of the months in some languages that teachers' spreadsheets come in.
const MONTHS: readonly (readonly [number, string])[] = [
  [1, "jan ene gen jän"],
  [2, "feb fév fev"],
  [3, "mar mär mrz maa"],
  [4, "apr avr abr"],
  [5, "may mai mag mei"],
  [6, "jun juin giu"],
  [7, "jul juil lug"],
  [8, "aug aoû ago"],
  [9, "sep set"],
  [10, "oct okt ott out"],
  [11, "nov"],
  [12, "dec dez déc dic"],
];

function monthNamed(name = ""): number {
  const lower = name.toLowerCase();
  const found = MONTHS.find(([, begins]) => begins.split(" ").some((it) => lower.startsWith(it)));
  return found?.[0] ?? 0;
}
