import { Fraction } from "fraction.js";
import { chanceText, plainDecimal } from "../chance-text.ts";
import { payerInWords } from "../payer-key.ts";
import { lowestTier, underEvening } from "./price-parts.ts";
import { amounts, type PricedInWords } from "./priced-in-words.ts";

/** What one person brings, by what least, who pays under the evening, and whether the ladder holds. */
export function ladderPart(priced: PricedInWords): readonly string[] {
  const { sums, question, findings } = priced;
  const amount = amounts(priced);
  const lowest = lowestTier(question.tiers);
  const low =
    lowest === null ? "" : ` The least is ${amount(lowest.perClass)}, by ${payerInWords(lowest.key)}.`;
  return [
    `One person brings ${amount(sums.yield)} on average.${low}`,
    ...underPart(priced),
    ...displacedPart(priced),
    ...(findings.length === 0
      ? ["The ladder of prices holds."]
      : findings.map(({ says, next }) => `${says} ${next}`)),
  ];
}

function underPart(priced: PricedInWords): readonly string[] {
  const { eveningPrice } = priced.sums;
  const under = underEvening(priced.question.tiers, eveningPrice);
  if (eveningPrice === null || under.length === 0) return [];
  const share = under.reduce((sum, tier) => sum.add(tier.share), new Fraction(0)).valueOf();
  const names = under.map(({ key }) => payerInWords(key)).join(", ");
  return [
    `With the people to be expected a class must bring ${amounts(priced)(eveningPrice)} a head to pay for the evening; ${chanceText(share)} of them pay less: ${names}.`,
  ];
}

function displacedPart(priced: PricedInWords): readonly string[] {
  const { displaced } = priced.sums;
  if (displaced === null || displaced.costs < 1) return [];
  const turned = plainDecimal(displaced.displaced, 2);
  return [
    `When it is full cheaper places keep out up to ${turned} singles an evening on average, ${amounts(priced)(displaced.costs)} an evening.`,
  ];
}
