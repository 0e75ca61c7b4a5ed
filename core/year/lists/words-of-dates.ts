const MONTHS = [
  "january",
  "february",
  "march",
  "april",
  "may",
  "june",
  "july",
  "august",
  "september",
  "october",
  "november",
  "december",
];
const WEEKDAYS = ["monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday"];

/** "Sept." and "september" are 9; undefined for what names no month. At least three letters. */
export function monthOf(word: string): number | undefined {
  return placeIn(MONTHS, word);
}

/** "Thurs" and "thursday" are 4, 1 is Monday; undefined for what names no day. At least three letters, or "Tu". */
export function weekdayOf(word: string): number | undefined {
  return placeIn(WEEKDAYS, word);
}

/** 9 as "September". */
export function monthName(month: number): string {
  return capital(MONTHS[month - 1] ?? `month ${month}`);
}

/** 2 as "Tuesday". */
export function weekdayName(weekday: number): string {
  return capital(WEEKDAYS[weekday - 1] ?? `day ${weekday}`);
}

function placeIn(names: readonly string[], word: string): number | undefined {
  const plain = word.toLowerCase().replace(/\.$/, "");
  if (plain.length < 3) return undefined;
  // "sept", "tues" and "thurs" are beginnings too
  const at = names.findIndex((name) => name.startsWith(plain));
  return at === -1 ? undefined : at + 1;
}

function capital(word: string): string {
  return `${word.slice(0, 1).toUpperCase()}${word.slice(1)}`;
}
