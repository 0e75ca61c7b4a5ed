import { type CurrencyCode, isCurrency, minor, moneyText } from "#core/words";

/** 1250 minor units as "12.50". Throws on a currency that is none. */
export function moneyTextOf(amount: number, currency: string): string {
  return moneyText(minor(amount), sound(currency));
}

function sound(currency: string): CurrencyCode {
  if (!isCurrency(currency)) throw new RangeError(`not a currency: ${currency}`);
  return currency;
}
