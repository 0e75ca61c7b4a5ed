import {
  bad,
  type CurrencyCode,
  good,
  minor,
  problem,
  type Result,
  together,
  togetherInOrder,
} from "#core/words";
import type { z } from "zod";
import type { mixSchema, pricesSchema } from "./evening-document.ts";
import type { Payer } from "./evening-types.ts";
import { payerKey } from "./payer-key.ts";
import { readMix, type Share } from "./read-mix.ts";
import { type Prices, readPrices } from "./read-prices.ts";

type PricesDocument = z.output<typeof pricesSchema>;
type MixDocument = z.output<typeof mixSchema>;

const zero = minor(0);

/** Who pays what: the mix joined with the prices. Problem besides those of each: "price-missing". */
export function readPayers(
  prices: PricesDocument,
  mix: MixDocument,
  currency: CurrencyCode,
): Result<readonly Payer[]> {
  const read = together({ prices: readPrices(prices, currency), shares: readMix(mix) });
  if (!read.ok) return read;
  const { shares } = read.value;
  return togetherInOrder(shares.map((share) => payerOf(share, read.value.prices)));
}

function payerOf({ key, share }: Share, prices: Prices): Result<Payer> {
  const priced = pricedAt(key, prices);
  if (priced !== null) return good({ key, share, ...priced });
  // nobody pays it, so nobody misses its price
  if (share.equals(0)) return good({ key, share, price: zero, classes: 1 });
  const says = `Part of the mix pays by “${key}”, which has no price.`;
  return bad(problem("price-missing", `mix.${key}`, says, "Add the price or take it out of the mix."));
}

function pricedAt(key: string, prices: Prices): Pick<Payer, "price" | "classes"> | null {
  const payer = payerKey(key);
  switch (payer?.kind) {
    case "free":
      return { price: zero, classes: 1 };
    case "single":
      return prices.single === null ? null : { price: prices.single, classes: 1 };
    case "concession":
      return prices.concession === null ? null : { price: prices.concession, classes: 1 };
    case "pass":
      return prices.passes.find(({ classes }) => classes === payer.classes) ?? null;
    case undefined:
      return null;
  }
}
