import { exactNumberText, exactText, moneyText, type WorkingLine } from "#core/words";
import { chanceText, plainDecimal } from "../chance-text.ts";
import { payerName } from "../payer-key.ts";
import { type PartLine, partLines } from "../reply.ts";
import { coins } from "./price-parts.ts";
import type { PriceQuestion } from "./price-question.ts";
import type { PriceSums } from "./price-sums.ts";
import { riseLines } from "./rises-json.ts";
import { targetLines } from "./target-json.ts";

/** The sums behind a price answer: the yield, the evening, rises, a target pay, the studio. */
export function priceWorking(question: PriceQuestion, sums: PriceSums): readonly PartLine[] {
  return [
    ...partLines("yield", yieldLines(question, sums)),
    ...partLines("heads", headsLines(question, sums)),
    ...partLines("rise", riseLines(sums, question)),
    ...partLines("target", targetLines(sums, question)),
    ...partLines("studio", studioLines(question, sums)),
  ];
}

function yieldLines({ tiers, currency, perHead }: PriceQuestion, sums: PriceSums): readonly WorkingLine[] {
  const paid = tiers.filter(({ share }) => share.gt(0));
  return [
    ...paid.map(({ key, share, price, classes, perClass }) => ({
      label: payerName(key),
      sum: `${exactNumberText(share)} × ${moneyText(price, currency)}${classes === 1 ? "" : ` ÷ ${classes}`}`,
      amount: exactText(share.mul(perClass), currency),
    })),
    { label: "One person brings on average", sum: "", amount: exactText(sums.yield, currency), total: true },
    {
      label: "One person leaves",
      sum: `${exactText(sums.yield, currency)} − ${moneyText(perHead, currency)} cost per head`,
      amount: exactText(sums.margin, currency),
    },
  ];
}

function headsLines(
  { demand, capacity, currency, cost }: PriceQuestion,
  sums: PriceSums,
): readonly WorkingLine[] {
  const { heads, margin } = sums;
  const expected = plainDecimal(heads.expectedHeads, 3);
  return [
    {
      label: "People on average",
      sum: `${plainDecimal(demand.mean, 2)} would like to come, ${capacity} places, ${plainDecimal(heads.turnedAway, 3)} turned away`,
      amount: expected,
    },
    {
      label: "They leave",
      sum: `${expected} × ${exactText(margin, currency)}`,
      amount: coins(heads.expectedHeads * margin.valueOf(), currency),
    },
    { label: "less the evening", sum: "", amount: moneyText(cost, currency) },
    {
      label: "An evening leaves on average",
      sum: "",
      amount: coins(heads.expectedContribution, currency),
      total: true,
    },
    { label: "Chance of a loss", sum: lossSum(sums), amount: chanceText(heads.chanceOfLoss) },
  ];
}

function lossSum({ breakEven }: PriceSums): string {
  return breakEven === null ? "no number of people pays for it" : `fewer than ${breakEven} people`;
}

function studioLines(
  { studio, doorToDoor, currency }: PriceQuestion,
  sums: PriceSums,
): readonly WorkingLine[] {
  if (sums.studio === null || studio === null || doorToDoor === null) return [];
  const { own, studio: theirs } = sums.studio;
  return [
    {
      label: "Your own class",
      sum: `${coins(own.perSession, currency)} ÷ ${doorToDoor} min × 60`,
      amount: coins(own.perHour, currency),
    },
    {
      label: studio.name,
      sum: `${coins(theirs.perSession, currency)} ÷ ${studio.minutes} min × 60`,
      amount: coins(theirs.perHour, currency),
    },
  ];
}
