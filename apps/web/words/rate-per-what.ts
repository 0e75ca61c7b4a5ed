import type { HireTermsDocument } from "#core/hall";
import { isCurrency, type Locale, readMoney } from "#core/words";
import { Fraction } from "fraction.js";
import { moneyWords } from "./money-words.ts";

/** "£14.00 an hour" or "£40.00 a session"; empty where nothing readable is stated. */
export function ratePerWhat(hire: HireTermsDocument | undefined, currency: string, locale: Locale): string {
  if (hire === undefined || !isCurrency(currency)) return "";
  const text = hire.perHour ?? hire.perSession;
  if (text === undefined) return "";
  const read = readMoney(text, currency, "hire");
  if (!read.ok) return "";
  const per = hire.perHour === undefined ? "a session" : "an hour";
  return `${moneyWords(new Fraction(read.value), currency, locale)} ${per}`;
}
