import { chanceText } from "../chance-text.ts";
import { amounts, people, type PricedInWords } from "./priced-in-words.ts";

export function studioPart(priced: PricedInWords): readonly string[] {
  const { sums, question } = priced;
  const { studio: found } = sums;
  if (found === null || question.studio === null) return [];
  const amount = amounts(priced);
  const { name } = question.studio;
  return [
    equalSentence(found.equalHeads, question.capacity, name),
    `An hour from door to door leaves ${amount(found.own.perHour)} in your own class and ${amount(found.studio.perHour)} at ${name}; in the worst quarter of the evenings ${amount(found.ownWorstQuarter.perHour)} and ${amount(found.studioWorstQuarter.perHour)}.`,
    `Your own class is the better hour ${chanceText(found.chanceOwnIsBetter)} of the time.`,
  ];
}

function equalSentence(equal: number | null, capacity: number, name: string): string {
  if (equal === null) return `However many come, your own class never earns what ${name} pays.`;
  const full = equal > capacity ? `, which is more than the ${capacity} that fit` : "";
  return `With ${people(equal, 0)} your own class earns as much an hour as ${name}${full}.`;
}
