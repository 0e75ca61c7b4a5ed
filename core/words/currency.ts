import { type Brand, branded } from "./brand.ts";

export type CurrencyCode = Brand<string, "CurrencyCode">;

// ISO 4217:2015 active codes, by number of decimal places; two unless listed otherwise.
const NONE = "BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX UYI VND VUV XAF XOF XPF";
const THREE = "BHD IQD JOD KWD LYD OMR TND";
const TWO =
  "AED AFN ALL AMD AOA ARS AUD AWG AZN BAM BBD BDT BMD BND BOB BRL BSD BTN BWP BYN BZD CAD CDF CHF CNY COP CRC CUP CVE CZK DKK DOP DZD EGP ERN ETB EUR FJD FKP GBP GEL GHS GIP GMD GTQ GYD HKD HNL HTG HUF IDR ILS INR IRR JMD KES KGS KHR KPW KYD KZT LAK LBP LKR LRD LSL MAD MDL MGA MKD MMK MNT MOP MRU MUR MVR MWK MXN MYR MZN NAD NGN NIO NOK NPR NZD PAB PEN PGK PHP PKR PLN QAR RON RSD RUB SAR SBD SCR SDG SEK SGD SHP SLE SOS SRD SSP STN SVC SYP SZL THB TJS TMT TOP TRY TTD TWD TZS UAH USD UYU UZS VES WST XCD YER ZAR ZMW";

const digits = new Map<string, number>();
for (const code of NONE.split(" ")) digits.set(code, 0);
for (const code of TWO.split(" ")) digits.set(code, 2);
for (const code of THREE.split(" ")) digits.set(code, 3);

export function isCurrency(code: string): code is CurrencyCode {
  return digits.has(code);
}

/** Decimal places of the currency: 2 for GBP, 0 for JPY. */
export function currencyDigits(code: CurrencyCode): number {
  const found = digits.get(code);
  if (found === undefined) throw new RangeError(`not a currency: ${code}`);
  return found;
}

export function currencyCodes(): readonly CurrencyCode[] {
  return [...digits.keys()].sort().map((code) => branded<CurrencyCode>(code));
}
