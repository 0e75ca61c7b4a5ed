import { dayNumberOf, weekdayOfDay } from "#kernels/calendar";
import { monthNames, weekdayNames } from "./calendar-names.ts";
import { type CurrencyCode, isCurrency } from "./currency.ts";
import { type Locale, type TwinWord, word } from "./glossary.ts";
import { minor, moneyText } from "./money.ts";

/**
 * How dates, times and money are put into words for a reader, so that the trade can write whole sentences
 * without knowing a locale. A screen may pass its own; `plainWriter` is enough for a test or a terminal.
 */
export type Writer = {
  /** "2026-11-24" → "Tuesday 24 November 2026" */
  readonly day: (date: string) => string;
  /** "18:30" → "18:30", or "6:30 pm" in the United States */
  readonly time: (time: string) => string;
  /** 900 minor units of "GBP" → "9.00 GBP" */
  readonly money: (amount: number, currency: string) => string;
  /** "hire" → "hire", or "rental" in the United States */
  readonly word: (term: TwinWord) => string;
};

export function plainWriter(locale: Locale): Writer {
  const shared = { money: plainMoney, word: (term: TwinWord) => word(term, locale) };
  return locale === "en-US"
    ? { ...shared, day: dayUs, time: timeUs }
    : { ...shared, day: dayUk, time: (time) => time };
}

function dayUk(date: string): string {
  const { weekday, day, month, year } = partsOf(date);
  return `${weekday} ${day} ${month} ${year}`;
}

function dayUs(date: string): string {
  const { weekday, day, month, year } = partsOf(date);
  return `${weekday}, ${month} ${day}, ${year}`;
}

function timeUs(time: string): string {
  const [hour = 0, minutes = 0] = time.split(":").map(Number);
  const half = hour < 12 ? "am" : "pm";
  return `${hour % 12 === 0 ? 12 : hour % 12}:${String(minutes).padStart(2, "0")} ${half}`;
}

function plainMoney(amount: number, currency: string): string {
  return `${moneyText(minor(amount), sound(currency))} ${currency}`;
}

function sound(currency: string): CurrencyCode {
  if (!isCurrency(currency)) throw new RangeError(`not a currency: ${currency}`);
  return currency;
}

function partsOf(date: string) {
  const number = dayNumberOf(date);
  if (number === undefined) throw new RangeError(`not a date: ${date}`);
  const [year = "", month = "", day = ""] = date.split("-");
  return {
    weekday: weekdayNames[weekdayOfDay(number) - 1] ?? "",
    day: Number(day),
    month: monthNames[Number(month) - 1] ?? "",
    year: Number(year),
  };
}
