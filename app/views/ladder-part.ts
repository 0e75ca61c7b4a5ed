import type { LadderJson, PriceJson } from "#core/price";
import { chanceText } from "#core/price";
import type { Problem } from "#core/words";
import { priceAmounts } from "./price-amounts.ts";
import { atTheClass } from "./price-question.ts";
import type { PricesAsked } from "./prices-asked.ts";
import type { PriceSheetInput } from "./price-sheet.ts";
import { type SheetPart, said, unsound } from "./sheet-part.ts";

export type LadderPart = SheetPart<{
  /** what does not hold together, in words; nothing of it keeps an answer back */
  readonly findings: readonly Problem[];
}>;

/** Whether the prices hold together. */
export function ladderPart(input: PriceSheetInput, asked: PricesAsked): LadderPart {
  if (asked.kind !== "ready") return asked;
  if (!asked.answer.ok) return unsound(asked.answer.problems.map(atTheClass));
  const json = asked.answer.value;
  const { findings } = json.ladder;
  const says = [
    holdsSentence(findings.length),
    ...lowestSentence(input, json.ladder),
    ...underSentence(input, json),
    ...displacedSentence(input, json.ladder),
  ];
  const lines = json.ladder.tiers.map(({ name, price, classes, perClass }) => ({
    label: name,
    sum: classes === 1 ? "" : `${price} ÷ ${classes}`,
    amount: perClass,
  }));
  return {
    ...said(input, "break-even", says, [{ title: "What a class brings by each way of paying", lines }]),
    findings: findings.map(atTheClass),
  };
}

function holdsSentence(count: number): string {
  if (count === 0) return "The prices hold together.";
  return count === 1
    ? "One thing in the prices does not hold together."
    : `${count} things in the prices do not hold together.`;
}

function lowestSentence(input: PriceSheetInput, { lowest, tiers }: LadderJson): readonly string[] {
  const tier = tiers.find(({ key }) => key === lowest?.key);
  if (lowest === null || tier === undefined) return [];
  const { write } = priceAmounts(input);
  return [`The least that anybody pays is ${write(lowest.perClass)} a class: ${tier.name.toLowerCase()}.`];
}

/** A price under what an evening needs of each head is carried by the others. */
function underSentence(input: PriceSheetInput, { ladder }: PriceJson): readonly string[] {
  const { eveningPrice, underEvening, tiers } = ladder;
  if (eveningPrice === null || underEvening.length === 0) return [];
  const under = tiers.filter(({ key }) => underEvening.includes(key));
  const share = under.reduce((sum, tier) => sum + tier.share, 0);
  const names = under.map(({ name }) => name.toLowerCase()).join(", ");
  const { write } = priceAmounts(input);
  return [
    `An evening needs ${write(eveningPrice)} of each person who can be expected, and ${chanceText(share)} of them pay less: ${names}.`,
  ];
}

function displacedSentence(input: PriceSheetInput, { displaced }: LadderJson): readonly string[] {
  if (displaced === null || Number(displaced.costs) <= 0) return [];
  const { write } = priceAmounts(input);
  return [
    `The hall is full ${chanceText(displaced.chanceFull)} of the time; places that go for less then keep singles out, which costs up to ${write(displaced.costs)} an evening on average.`,
  ];
}
