import { chanceText, plainDecimal } from "../chance-text.ts";
import { curvePart, surveyPart } from "./curve-sentences.ts";
import { ladderPart } from "./ladder-sentences.ts";
import type { PriceJson } from "./price-json.ts";
import { amounts, people, type PricedInWords } from "./priced-in-words.ts";
import { studioPart } from "./studio-sentences.ts";

/** The answer first: what an evening leaves and how surely, the ladder, the curve, the studio, what would change it. */
export function priceSentences(priced: PricedInWords): readonly string[] {
  return [
    ...eveningPart(priced),
    ...ladderPart(priced),
    ...priced.asked,
    ...curvePart(priced),
    ...surveyPart(priced),
    ...studioPart(priced),
    ...changePart(priced),
  ];
}

function eveningPart(priced: PricedInWords): readonly string[] {
  const { sums, question } = priced;
  const amount = amounts(priced);
  const { heads } = sums;
  const left = heads.expectedContribution;
  const result = left < 0 ? `is ${amount(-left)} short` : `leaves ${amount(left)}`;
  const [few, many] = heads.usualHeads;
  const term = `over ${heads.term.sessions === 1 ? "1 evening" : `${heads.term.sessions} evenings`} ${chanceText(heads.term.chanceOfLoss)}`;
  return [
    `An evening ${result} on average, with ${people(heads.expectedHeads, 1)} on the mats.`,
    `It loses money with a chance of ${chanceText(heads.chanceOfLoss)}, and ${term}, if evenings do not go up and down together.`,
    `Eight evenings of ten have ${few === many ? people(few, 0) : `${few} to ${people(many, 0)}`}; the hall is full ${chanceText(heads.chanceFull)} of the time.`,
    ...rosy(priced, question.demand.mean),
  ];
}

/** Told where the plain formula is more than a coin off. */
function rosy(priced: PricedInWords, mean: number): readonly string[] {
  const { heads } = priced.sums;
  const over = heads.contributionAtMean - heads.expectedContribution;
  if (Math.abs(over) < 1) return [];
  const amount = amounts(priced);
  return [
    `The sum with the mean of ${plainDecimal(mean, 2)} people says ${amount(heads.contributionAtMean)}, ${amount(Math.abs(over))} too ${over > 0 ? "much" : "little"}, since a full hall turns people away.`,
  ];
}

function changePart({ changes }: PricedInWords): readonly string[] {
  return [...nearestOf(changes.evening), ...nearestOf(changes.studio ?? [])];
}

function nearestOf(changes: PriceJson["changes"]["evening"]): readonly string[] {
  return changes
    .filter(({ at }) => at !== null)
    .slice(0, 1)
    .map(({ says }) => says);
}
