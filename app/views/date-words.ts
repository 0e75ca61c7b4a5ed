import { type Locale, monthNames, weekdayNames } from "#core/words";

/** "2027-05-11" as "11 May 2027", or "May 11, 2027" in the United States. Throws on no date. */
export function dateWords(date: string, locale: Locale): string {
  const [year = "", month = "", day = ""] = date.split("-");
  const name = monthName(month, date);
  return locale === "en-US" ? `${name} ${Number(day)}, ${year}` : `${Number(day)} ${name} ${year}`;
}

/** Every ISO date of a sentence in words: problems of documents tell dates as the document has them. */
export function datesInWords(says: string, locale: Locale): string {
  return says.replace(/\b\d{4}-(0[1-9]|1[0-2])-\d{2}\b/g, (date) => dateWords(date, locale));
}

/** "2027-05" as "May 2027". */
export function monthWords(month: string): string {
  const [year = "", number = ""] = month.split("-");
  return `${monthName(number, month)} ${year}`;
}

/** 1 as "Monday". Throws on anything but 1 to 7. */
export function weekdayWord(weekday: number): string {
  const name = weekdayNames[weekday - 1];
  if (name === undefined) throw new RangeError(`no weekday: ${weekday}`);
  return name;
}

function monthName(number: string, from: string): string {
  const name = monthNames[Number(number) - 1];
  if (name === undefined) throw new RangeError(`no month: ${from}`);
  return name;
}

/** Every time of day of a sentence in words, as the sums of a week tell them. */
export function timesInWords(says: string, locale: Locale): string {
  return says.replace(/\b\d{2}:\d{2}\b/g, (time) => timeWords(time, locale));
}

/** "18:30" is "6:30 pm" where clocks have twelve hours; a half-typed time stays as it is. */
export function timeWords(start: string, locale: Locale): string {
  const read = /^(\d{2}):(\d{2})$/.exec(start);
  if (locale !== "en-US" || read === null) return start;
  const hours = Number(read[1]);
  return `${hours % 12 === 0 ? 12 : hours % 12}:${read[2]} ${hours < 12 ? "am" : "pm"}`;
}
