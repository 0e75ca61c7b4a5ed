import { dateOfDay, weekdayOfDay } from "#kernels/calendar";
import { bad, good, problem, type Result } from "#core/words";
import { type DateReading, readAnyDate } from "./read-any-date.ts";

export type DateOrder = "day-first" | "month-first";

/** How the dates of a column are read, and why so. */
export type DateStyle = {
  /** serial: days counted by a spreadsheet, 46293 for 28 September 2026 */
  readonly written: "calendar" | "serial";
  readonly order: DateOrder;
  /**
   * written: every date can only be read one way; shown: some can, and all of those agree; told: said by
   * whoever asked; likely: by the weekdays or the row order, which is a guess
   */
  readonly how: "written" | "shown" | "told" | "likely";
};

/** Days between a spreadsheet's day nought, 30 December 1899, and 1 January 1970. */
const SERIAL_TO_1970 = 25_569;
const SERIAL = /^\d{5}(?:[.,]\d+)?$/;

/**
 * How the dates of a whole column are read: one 25/04 says that the day comes first in all of them.
 * Problems, at the place given: "date-order-unclear" when the column does not show it, "date-order-mixed" when
 * it shows both; `told` settles either.
 */
export function dateStyleOf(texts: readonly string[], place: string, told?: DateOrder): Result<DateStyle> {
  const filled = texts.filter((text) => text.trim() !== "");
  const serials = filled.filter((text) => serialDay(text) !== undefined).length;
  if (serials > 0 && serials >= filled.length * 0.8) {
    return good({ written: "serial", order: "day-first", how: "written" });
  }
  const calendar = { written: "calendar" } as const;
  if (told !== undefined) return good({ ...calendar, order: told, how: "told" });
  const readings = filled.map(readAnyDate).filter((it) => it !== undefined);
  const day = readings.filter((it) => it.monthFirst === undefined).length;
  const month = readings.filter((it) => it.dayFirst === undefined).length;
  const order = day >= month ? "day-first" : "month-first";
  if (Math.min(day, month) > (day + month) * MISTAKES) return bad(mixed(day, month, place));
  if (day + month > 0) return good({ ...calendar, order, how: "shown" });
  if (readings.every((it) => it.dayFirst === it.monthFirst))
    return good({ ...calendar, order, how: "written" });
  const likely = likelyOrder(readings);
  return likely === undefined
    ? bad(unclear(readings, place))
    : good({ ...calendar, order: likely, how: "likely" });
}

// a slip in one row of ten does not make the column a mixed one
const MISTAKES = 0.1;

/** The day that a value is in this style; undefined where it is none. */
export function dayInStyle(text: string, style: DateStyle): number | undefined {
  if (style.written === "serial") return serialDay(text) ?? readAnyDate(text)?.dayFirst;
  const reading = readAnyDate(text);
  return style.order === "day-first" ? reading?.dayFirst : reading?.monthFirst;
}

function serialDay(text: string): number | undefined {
  const written = text.trim();
  if (!SERIAL.test(written)) return undefined;
  const serial = Math.floor(Number(written.replace(",", ".")));
  // 1954 to 2064: other numbers of five digits are no dates of a class
  return serial >= 20_000 && serial <= 60_000 ? serial - SERIAL_TO_1970 : undefined;
}

/** A class keeps its weekdays, and rows are mostly in the order of time: the reading that does so is likely. */
function likelyOrder(readings: readonly DateReading[]): DateOrder | undefined {
  const dayFirst = readings.map((it) => it.dayFirst ?? 0);
  const monthFirst = readings.map((it) => it.monthFirst ?? 0);
  if (new Set(dayFirst).size < ENOUGH_DATES) return undefined;
  const weekdays = [dayFirst, monthFirst].map((days) => new Set(days.map(weekdayOfDay)).size);
  const back = [dayFirst, monthFirst].map(
    (days) => days.filter((day, at) => day < (days[at - 1] ?? day)).length,
  );
  return lower(weekdays[0] ?? 0, weekdays[1] ?? 0, 2) ?? lower(back[0] ?? 0, back[1] ?? 0, 0);
}

const ENOUGH_DATES = 4;

/** The order whose figure is at most `most` where the other's is at least twice that and two more. */
function lower(day: number, month: number, most: number): DateOrder | undefined {
  if (day <= most && month >= 2 * day + 2) return "day-first";
  return month <= most && day >= 2 * month + 2 ? "month-first" : undefined;
}

function unclear(readings: readonly DateReading[], place: string) {
  const { dayFirst = 0, monthFirst = 0 } = readings.find((it) => it.dayFirst !== it.monthFirst) ?? {};
  const says = `The dates may have the day or the month first: the same one is ${dateOfDay(dayFirst)} or ${dateOfDay(monthFirst)}.`;
  return problem("date-order-unclear", place, says, "Say which comes first: day-first or month-first.");
}

function mixed(day: number, month: number, place: string) {
  const says = `Of the dates ${day} can only have the day first and ${month} only the month first.`;
  const next = "Say which comes first, day-first or month-first; rows that do not fit are then listed.";
  return problem("date-order-mixed", place, says, next);
}
