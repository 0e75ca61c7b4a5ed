import { type CurrencyCode, currencyDigits, type ExactMinor, type Locale, roundToMinor } from "#core/words";

/** "£28.48" for 2847.6 minor units of GBP: rounded to the coin, with the currency's sign as the reader writes it. */
export function moneyWords(exact: ExactMinor, currency: CurrencyCode, locale: Locale): string {
  const places = currencyDigits(currency);
  const minor = roundToMinor(exact);
  const written = new Intl.NumberFormat(locale, {
    style: "currency",
    currency,
    minimumFractionDigits: places,
    maximumFractionDigits: places,
  }).format(Math.abs(minor) / 10 ** places);
  // a true minus sign, which a screen reader says and a hyphen does not
  return minor < 0 ? `−${written}` : written;
}

/** "£50" for 50 major units, for the side of a plot; decimals only where there are any. */
export function wholeMoney(major: number, currency: string, locale: Locale): string {
  const written = new Intl.NumberFormat(locale, {
    style: "currency",
    currency,
    minimumFractionDigits: 0,
  }).format(Math.abs(major));
  return major < 0 ? `−${written}` : written;
}

/** "£" for GBP, "CHF" for a currency without a sign. */
export function currencySign(currency: string): string {
  const parts = new Intl.NumberFormat("en", {
    style: "currency",
    currency,
    currencyDisplay: "narrowSymbol",
  }).formatToParts(0);
  return parts.find((it) => it.type === "currency")?.value ?? currency;
}
