import { isCurrency, minor, moneyText, readMoney } from "#core/words";

/** "12.50" of a currency as 1250; null where it cannot be read. */
export function coinsOf(text: string, currency: string): number | null {
  if (!isCurrency(currency)) return null;
  const read = readMoney(text, currency, "");
  return read.ok ? read.value : null;
}

/** 1250 as "12.50", as a field of money holds it. */
export function textOfCoins(coins: number, currency: string): string {
  return isCurrency(currency) ? moneyText(minor(coins), currency) : String(coins);
}
