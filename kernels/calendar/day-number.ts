const MONTH_STARTS = [0, 31, 61, 92, 122, 153, 184, 214, 245, 275, 306, 337];

/**
 * Days since 1 January 1970 of a day of the calendar: 0 for 1970-01-01, a Thursday. undefined for a day that the
 * month does not have. For lists of ten thousands of dates, where a date object for each would be slow.
 */
export function dayNumber(year: number, month: number, day: number): number | undefined {
  if (![year, month, day].every(Number.isInteger) || year < 1 || year > 9999) return undefined;
  if (month < 1 || month > 12 || day < 1 || day > daysOf(year, month)) return undefined;
  // the year is begun in March, so that the leap day is its last
  const shifted = month > 2 ? year : year - 1;
  const leaps = Math.floor(shifted / 4) - Math.floor(shifted / 100) + Math.floor(shifted / 400);
  return shifted * 365 + leaps + (MONTH_STARTS[(month + 9) % 12] ?? 0) + day - 1 - DAYS_TO_1970;
}

// 1 March of the year nought until 1 January 1970
const DAYS_TO_1970 = 719_468;

/** "2027-02-28" as a day's number; undefined for another way of writing it and for a day there is not. */
export function dayNumberOf(date: string): number | undefined {
  const parts = /^(\d{4})-(\d{2})-(\d{2})$/.exec(date);
  return parts === null ? undefined : dayNumber(Number(parts[1]), Number(parts[2]), Number(parts[3]));
}

/** The date of a day's number, as "2027-02-28". */
export function dateOfDay(number: number): string {
  if (!Number.isInteger(number)) throw new RangeError(`day: ${number}`);
  const days = number + DAYS_TO_1970;
  // a year too early at most, by the mean length of a year; then forward
  let year = Math.floor(days / 365.2425) - 1;
  while ((dayNumber(year + 1, 3, 1) ?? Number.POSITIVE_INFINITY) <= number) year += 1;
  const inYear = number - (dayNumber(year, 3, 1) ?? 0);
  const index = MONTH_STARTS.findLastIndex((start) => start <= inYear);
  const month = ((index + 2) % 12) + 1;
  const day = inYear - (MONTH_STARTS[index] ?? 0) + 1;
  return `${pad(month > 2 ? year : year + 1, 4)}-${pad(month, 2)}-${pad(day, 2)}`;
}

/** 1 for Monday to 7 for Sunday. */
export function weekdayOfDay(number: number): number {
  return ((((number + 3) % 7) + 7) % 7) + 1;
}

function daysOf(year: number, month: number): number {
  if (month === 2) return year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0) ? 29 : 28;
  return [4, 6, 9, 11].includes(month) ? 30 : 31;
}

function pad(value: number, length: number): string {
  return String(value).padStart(length, "0");
}
