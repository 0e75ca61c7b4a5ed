import { type CurrencyCode, currencyDigits, type ExactMinor, type Locale, roundToMinor } from "#core/words";

/** "£28.48" for 2847.6 minor units of GBP: rounded to the coin, with the currency's sign as the reader writes it. */
export function moneyWords(exact: ExactMinor, currency: CurrencyCode, locale: Locale): string {
  const places = currencyDigits(currency);
  const minor = roundToMinor(exact);
  const options = { minimumFractionDigits: places, maximumFractionDigits: places };
  const written = writerOf(locale, currency, options).format(Math.abs(minor) / 10 ** places);
  // a true minus sign, which a screen reader says and a hyphen does not
  return minor < 0 ? `−${written}` : written;
}

/** "£50" for 50 major units, for the side of a plot; decimals only where there are any. */
export function wholeMoney(major: number, currency: string, locale: Locale): string {
  const written = writerOf(locale, currency, { minimumFractionDigits: 0 }).format(Math.abs(major));
  return major < 0 ? `−${written}` : written;
}

/** "£" for GBP, "CHF" for a currency without a sign. */
export function currencySign(currency: string): string {
  const parts = writerOf("en", currency, { currencyDisplay: "narrowSymbol" }).formatToParts(0);
  return parts.find((it) => it.type === "currency")?.value ?? currency;
}

// making a writer takes far longer than writing with it, and a class sheet writes some hundred amounts at every key
const writers = new Map<string, Intl.NumberFormat>();

function writerOf(locale: string, currency: string, options: Intl.NumberFormatOptions): Intl.NumberFormat {
  const key = `${locale} ${currency} ${JSON.stringify(options)}`;
  const kept = writers.get(key) ?? new Intl.NumberFormat(locale, { ...options, style: "currency", currency });
  writers.set(key, kept);
  return kept;
}
