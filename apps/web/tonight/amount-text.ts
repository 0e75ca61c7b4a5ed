import { type CurrencyCode, minor, moneyText } from "#core/words";

/** 1000 of GBP as "10.00", as it stands in a box. */
export function amountText(amount: number, currency: CurrencyCode): string {
  return moneyText(minor(amount), currency);
}
