import { guessesBehind } from "#core/class";
import { chanceText, type PriceJson, type StudioJson } from "#core/price";
import { peopleWords, priceAmounts } from "./price-amounts.ts";
import { atTheClass } from "./price-question.ts";
import type { PricesAsked } from "./prices-asked.ts";
import type { PriceSheetInput } from "./price-sheet.ts";
import { missing, type SheetPart, saidOn, unsound } from "./sheet-part.ts";

export type StudioPart = SheetPart<{
  readonly studio: string;
  /** her own hour for each number of people, and the studio's, in major units of the currency */
  readonly rows: readonly { readonly heads: number; readonly hour: number; readonly says: string }[];
  readonly studioHour: number;
  readonly equalHeads: number | null;
}>;

/** Her own class against a studio's, for an hour from door to door. */
export function studioPart(input: PriceSheetInput, asked: PricesAsked): StudioPart {
  if (asked.kind !== "ready") return asked;
  if (asked.studio === null) {
    return missing(
      "No studio’s offer is written down to compare with.",
      "Enter what a studio would pay you for a class.",
    );
  }
  if (!asked.studio.ok) return unsound(asked.studio.problems.map(atTheClass));
  const json = asked.studio.value;
  if (json.studio === null) throw new RangeError("a studio was asked for and none was answered");
  return answered(input, json, json.studio);
}

function answered(input: PriceSheetInput, json: PriceJson, studio: StudioJson): StudioPart {
  const { write } = priceAmounts(input);
  const { own, studio: theirs, ownWorstQuarter, studioWorstQuarter, name } = studio;
  const says = [
    betterSentence(studio, write),
    equalSentence(studio),
    `In the worst quarter of the evenings your own hour leaves ${write(ownWorstQuarter.perHour)} and theirs ${write(studioWorstQuarter.perHour)}.`,
    `By the class it is ${write(own.perSession)} of your own and ${write(theirs.perSession)} at ${name}, after travel.`,
  ];
  const lines = json.working.filter(({ part }) => part === "studio");
  const guesses = [
    ...guessesBehind(input.document, "ordinary evening"),
    ...input.document.guesses.filter((it) => it.startsWith("planning.studio")),
  ];
  return {
    ...saidOn(input, [...new Set(guesses)], says, [{ title: "An hour from door to door", lines }]),
    studio: name,
    rows: studio.table.map(({ heads, perHour }) => ({ heads, hour: Number(perHour), says: write(perHour) })),
    studioHour: Number(theirs.perHour),
    equalHeads: studio.equalHeads,
  };
}

function betterSentence({ own, studio, name }: StudioJson, write: (text: string) => string): string {
  const better = Number(own.perHour) - Number(studio.perHour);
  const [yours, theirs] = [write(own.perHour), write(studio.perHour)];
  if (better === 0)
    return `An hour from door to door leaves ${yours} in your own class and at ${name} alike.`;
  return better > 0
    ? `Your own class is the better hour: it leaves ${yours} from door to door and ${name} ${theirs}.`
    : `${name} is the better hour: it leaves ${theirs} from door to door and your own class ${yours}.`;
}

function equalSentence({ equalHeads, name, chanceOwnIsBetter }: StudioJson): string {
  if (equalHeads === null) return `However many come, your own class never earns what ${name} pays.`;
  return `With ${peopleWords(equalHeads)} your own class earns as much; that many come ${chanceText(chanceOwnIsBetter)} of the time.`;
}
