import {
  bad,
  type CurrencyCode,
  good,
  minor,
  type Problem,
  problem,
  type Result,
  together,
} from "#core/words";
import type { z } from "zod";
import type { mixSchema, PricesDocument } from "./evening-document.ts";
import type { Payer } from "./evening-types.ts";
import { freeRung, type PricedRung } from "./priced-rung.ts";
import { readMix, type Share } from "./read-mix.ts";
import { readPrices } from "./read-prices.ts";

type MixDocument = z.output<typeof mixSchema>;

/** Who pays what: the mix joined with the prices. Problem besides those of each: "price-missing". */
export function readPayers(
  prices: PricesDocument,
  mix: MixDocument,
  currency: CurrencyCode,
): Result<readonly Payer[]> {
  const read = readPriced(prices, mix, currency);
  if (!read.ok) return read;
  const { shares, rungs } = read.value;
  return good(shares.map((share) => payerOf(share, rungs)));
}

/** Every stated price and the free place, and the shares, each of which has its price if anybody pays so. */
export type Priced = { readonly rungs: readonly PricedRung[]; readonly shares: readonly Share[] };

/** Problem besides those of the prices and the mix: "price-missing". */
export function readPriced(prices: PricesDocument, mix: MixDocument, currency: CurrencyCode): Result<Priced> {
  const read = together({ prices: readPrices(prices, currency), shares: readMix(mix) });
  if (!read.ok) return read;
  const { shares } = read.value;
  const rungs = [...read.value.prices, freeRung];
  const missing = shares.filter(({ key, share }) => share.gt(0) && !rungs.some((rung) => rung.key === key));
  return missing.length > 0 ? bad(...missing.map(priceMissing)) : good({ rungs, shares });
}

function priceMissing({ key }: Share): Problem {
  const says = `Part of the mix pays by “${key}”, which has no price.`;
  return problem("price-missing", `mix.${key}`, says, "Add the price or take it out of the mix.");
}

function payerOf({ key, share }: Share, rungs: readonly PricedRung[]): Payer {
  const rung = rungs.find((it) => it.key === key);
  // nobody pays it, so nobody misses its price
  if (rung === undefined) return { key, share, price: minor(0), classes: 1 };
  return { key, share, price: rung.price, classes: rung.classes };
}
