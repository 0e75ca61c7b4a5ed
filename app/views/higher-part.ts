import { guessesBehind } from "#core/class";
import type { PriceJson } from "#core/price";
import { priceAmounts } from "./price-amounts.ts";
import { atTheClass } from "./price-question.ts";
import type { PricesAsked } from "./prices-asked.ts";
import type { PriceSheetInput } from "./price-sheet.ts";
import { missing, type SheetPart, saidOn, unsound } from "./sheet-part.ts";

export type HigherPart = SheetPart;

/** What a higher price may lose and still be level, and the price for the pay that she wants. */
export function higherPart(input: PriceSheetInput, asked: PricesAsked): HigherPart {
  if (asked.kind !== "ready") return asked;
  if (asked.higher === null) {
    return missing(
      "No rise and no pay is written down to work from.",
      "Say by how much you would put the single up, or what you want for an hour.",
    );
  }
  if (!asked.higher.ok) return unsound(asked.higher.problems.map(atTheClass));
  const json = asked.higher.value;
  const { document } = input;
  const guesses = [
    ...guessesBehind(document, "ordinary evening"),
    ...document.guesses.filter((it) => it.startsWith("planning.target")),
  ];
  const lines = (wanted: string) => json.working.filter(({ part }) => part === wanted);
  return saidOn(input, [...new Set(guesses)], saysOf(input, json), [
    { title: "What a rise can lose and still be level", lines: lines("rise") },
    { title: "The price for the pay you want", lines: lines("target") },
  ]);
}

function saysOf(input: PriceSheetInput, json: PriceJson): readonly string[] {
  const { rises, target } = json;
  const asked = rises.flatMap(({ single, all }) => [single, all]);
  return [
    ...asked.flatMap((it) => (it === null ? [] : [it.says])),
    ...(rises.length > 0 && asked.every((it) => it === null)
      ? ["A rise of the single changes nothing while there is no single."]
      : []),
    ...(rises.length > 0 ? wentSentences(json) : []),
    ...(target === null ? [] : [target.says, ...nowSentence(input, json)]),
  ];
}

/** A hall that turns people away has others who would come. */
function wentSentences({ heads }: PriceJson): readonly string[] {
  if (heads.turnedAway < 0.05) return [];
  return [
    "When the hall is full, who goes leaves a place to somebody who was turned away, so more may go than this says.",
  ];
}

function nowSentence(input: PriceSheetInput, { target }: PriceJson): readonly string[] {
  const { single } = input.document.prices;
  if (single === undefined || target?.single === null || target?.single === undefined) return [];
  const { write } = priceAmounts(input);
  const more = Number(target.single) - Number(single);
  if (Math.abs(more) < 0.005) return [`That is your single of ${write(single)} as it is.`];
  const difference = write(Math.abs(more).toFixed(2));
  return [
    more > 0
      ? `Your single of ${write(single)} is ${difference} less than that. A higher price may have fewer people: see which price leaves most.`
      : `Your single of ${write(single)} is ${difference} more than that, so it pays what you want.`,
  ];
}
