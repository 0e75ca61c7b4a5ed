import { timeWords } from "#app/views";
import { isCurrency, type Locale, word, type Writer } from "#core/words";
import { Fraction } from "fraction.js";
import { dateWords } from "../words/dates.ts";
import { moneyWords } from "../words/money-words.ts";

/** How the screens write dates, times and money: "£10.00" where a terminal has "10.00 GBP". */
export function screenWriter(locale: Locale): Writer {
  return {
    day: (date) => dateWords(date, locale),
    time: (time) => timeWords(time, locale),
    money: (amount, currency) =>
      isCurrency(currency)
        ? moneyWords(new Fraction(amount), currency, locale)
        : `${String(amount)} ${currency}`,
    word: (term) => word(term, locale),
  };
}
