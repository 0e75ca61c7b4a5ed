import type { PriceCurve } from "../curve/price-curve.ts";
import { amounts, type PricedInWords } from "./priced-in-words.ts";

const curveNames = {
  "constant elasticity": "With each per cent losing the same",
  linear: "On a straight line",
} as const;

export function curvePart(priced: PricedInWords): readonly string[] {
  const { curves, agreed } = priced.sums;
  if (curves.length === 0) return [];
  const amount = amounts(priced);
  const both =
    agreed === null
      ? "The two curves share no range: your beliefs leave the price open."
      : `Both curves are content with ${amount(agreed.from)} to ${amount(agreed.until)}.`;
  return [
    ...curves.map((curve) => curveSentence(curve, amount)),
    both,
    "Both rest on what you believe, which is a guess.",
  ];
}

function curveSentence(
  { curve, best, range, atEdge, points }: PriceCurve,
  amount: (value: number) => string,
): string {
  const name = curveNames[curve.kind];
  if (range === null)
    return `${name}, no price looked at leaves anything; ${amount(best.price)} loses least.`;
  const cut = range.until === points.at(-1)?.price ? ", the highest price looked at," : "";
  const near = `${amount(range.from)} to ${amount(range.until)}${cut} leaves nearly as much, within 5 %`;
  const edge =
    atEdge === null ? "" : ` That is the ${atEdge} price looked at: the curve does not say where to stop.`;
  return `${name}, ${amount(best.price)} leaves most, and ${near}.${edge}`;
}

export function surveyPart(priced: PricedInWords): readonly string[] {
  const { survey } = priced.sums;
  if (survey === null) return [];
  const amount = amounts(priced);
  const count = survey.count === 1 ? "1 price nearby is" : `${survey.count} prices nearby are`;
  return [
    survey.count === 1
      ? `${count} ${amount(survey.least)}.`
      : `${count} ${amount(survey.least)} to ${amount(survey.most)}, the middle one ${amount(survey.median)}.`,
  ];
}
