import type { MoneyWriter } from "#core/price";
import { type CurrencyCode, currencyDigits, type Locale, roundToMinor } from "#core/words";

/** "£28.48" for GBP in en-GB: to the coin, with the sign of the currency. */
export function moneyWriter(currency: CurrencyCode, locale: Locale): MoneyWriter {
  const digits = currencyDigits(currency);
  const format = new Intl.NumberFormat(locale, {
    style: "currency",
    currency,
    minimumFractionDigits: digits,
    maximumFractionDigits: digits,
  });
  return (exact) => format.format(roundToMinor(exact) / 10 ** digits);
}
