import type { Locale } from "#core/words";
import type { ClassDocument } from "#core/class";
import type { ClassSheetInput } from "./class-sheet-input.ts";
import { type EveningPart, eveningPart } from "./evening-part.ts";
import { type MatsPart, matsPart } from "./mats-part.ts";
import { type OrdinaryPart, ordinaryPart } from "./ordinary-part.ts";
import { type PricesPart, pricesPart } from "./prices-part.ts";
import { sheetHeading } from "./sheet-heading.ts";
import { timeWords, weekdayWord } from "./date-words.ts";
import { type YearPart, yearPart } from "./year-part.ts";

/** The page of one class in the order of the job; each part is a sentence with its working under it. */
export type ClassSheet = {
  /** "16 mats fit; the hall's own limit is 60; 5 people pay for the room." */
  readonly heading: string;
  /** "Tuesdays at 18:30, 60 minutes." */
  readonly when: string;
  readonly whoFor: string;
  readonly mats: MatsPart;
  readonly evening: EveningPart;
  readonly prices: PricesPart;
  readonly ordinary: OrdinaryPart;
  readonly year: YearPart;
};

/** Works the whole page out again from its documents; pure, and quick enough for every keystroke. */
export function classSheet(input: ClassSheetInput): ClassSheet {
  const prices = pricesPart(input);
  return {
    heading: sheetHeading(input, prices),
    when: whenSentence(input.document, input.practice.locale),
    whoFor: input.document.whoFor,
    mats: matsPart(input),
    evening: eveningPart(input),
    prices,
    ordinary: ordinaryPart(input),
    year: yearPart(input),
  };
}

function whenSentence({ weekday, start, minutes }: ClassDocument, locale: Locale): string {
  const sound = Number.isInteger(weekday) && weekday >= 1 && weekday <= 7;
  return `${sound ? `${weekdayWord(weekday)}s` : "Weekly"} at ${timeWords(start, locale)}, ${minutes.class} minutes.`;
}
