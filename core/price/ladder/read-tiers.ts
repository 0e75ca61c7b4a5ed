import { type CurrencyCode, good, type Result } from "#core/words";
import { Fraction } from "fraction.js";
import type { PricesDocument } from "../evening-document.ts";
import type { PricedRung } from "../priced-rung.ts";
import type { Share } from "../read-mix.ts";
import { readPriced } from "../read-payers.ts";
import type { Tier } from "./tier.ts";

/**
 * The ladder of prices joined with who pays by which rung: every price that is stated, also those that nobody
 * pays yet, and the free places of the mix. Problems: those of prices and of a mix, "price-missing".
 */
export function readTiers(
  prices: PricesDocument,
  mix: Readonly<Record<string, number>>,
  currency: CurrencyCode,
): Result<readonly Tier[]> {
  const read = readPriced(prices, mix, currency);
  if (!read.ok) return read;
  const { shares, rungs } = read.value;
  const tiers = rungs.map((rung) => tierOf(rung, shares));
  return good(tiers.filter(({ kind, share }) => kind !== "free" || share.gt(0)));
}

function tierOf({ floor, ...rung }: PricedRung, shares: readonly Share[]): Tier {
  const perClass = new Fraction(rung.price).div(rung.classes);
  return {
    ...rung,
    perClass,
    least: floor === undefined ? perClass : new Fraction(floor),
    share: shares.find(({ key }) => key === rung.key)?.share ?? new Fraction(0),
  };
}
