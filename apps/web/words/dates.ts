import type { Locale } from "#core/words";

/** Today on this device, as YYYY-MM-DD. */
export function today(): string {
  const now = new Date();
  return isoOf(now.getFullYear(), now.getMonth(), now.getDate());
}

/** The same day a year later less one day: a year from 2027-01-11 runs until 2028-01-10. */
export function yearFrom(iso: string): string {
  const { year, month, day } = partsOf(iso);
  return plain(new Date(Date.UTC(year + 1, month - 1, day - 1)));
}

/** "Monday 11 January 2027", or "Monday, January 11, 2027" for a US reader. */
export function dateWords(iso: string, locale: Locale): string {
  const weekday = write(iso, locale, { weekday: "long" });
  // put together here, because browsers differ over the comma
  return `${weekday}${locale === "en-US" ? "," : ""} ${dayWords(iso, locale)}`;
}

/** "11 January 2027". */
export function dayWords(iso: string, locale: Locale): string {
  return write(iso, locale, { day: "numeric", month: "long", year: "numeric" });
}

/** "January 2027" for "2027-01". */
export function monthWords(month: string, locale: Locale): string {
  return write(`${month}-01`, locale, { month: "long", year: "numeric" });
}

/** "January" for 1. */
export function monthName(month: number): string {
  return write(`2027-${String(month).padStart(2, "0")}-01`, "en-GB", { month: "long" });
}

/** "Monday" for 1, "Sunday" for 7. */
export function weekdayName(weekday: number): string {
  // 4 January 2027 is a Monday
  return write(`2027-01-0${3 + weekday}`, "en-GB", { weekday: "long" });
}

function write(iso: string, locale: Locale, options: Intl.DateTimeFormatOptions): string {
  const { year, month, day } = partsOf(iso);
  const date = new Date(Date.UTC(year, month - 1, day));
  return writerOf(locale, options).format(date);
}

// a writer takes about a tenth of a millisecond to make, and a class sheet writes forty dates at every key
const writers = new Map<string, Intl.DateTimeFormat>();

function writerOf(locale: Locale, options: Intl.DateTimeFormatOptions): Intl.DateTimeFormat {
  const key = `${locale} ${JSON.stringify(options)}`;
  const kept = writers.get(key) ?? new Intl.DateTimeFormat(locale, { ...options, timeZone: "UTC" });
  writers.set(key, kept);
  return kept;
}

function partsOf(iso: string) {
  const [year = Number.NaN, month = Number.NaN, day = Number.NaN] = iso.split("-").map(Number);
  if (Number.isNaN(year + month + day)) throw new RangeError(`not a date: ${iso}`);
  return { year, month, day };
}

function plain(date: Date): string {
  return date.toISOString().slice(0, 10);
}

function isoOf(year: number, month: number, day: number): string {
  return plain(new Date(Date.UTC(year, month, day)));
}
