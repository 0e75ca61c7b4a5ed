import type { HappenedDocument, outlookAnswer } from "#core/outlook";
import { type DemandPart, demandPart } from "./demand-part.ts";
import { type EveningChoicePart, eveningChoicePart } from "./evening-choice-part.ts";
import { type FullPart, fullPart } from "./full-part.ts";
import { type GoingPart, goingPart } from "./going-part.ts";
import { type NextPart, nextPart } from "./next-part.ts";
import { type OpeningPart, openingPart } from "./opening-part.ts";
import { outlookAsked } from "./outlook-asked.ts";
import type { PriceSheetInput } from "./price-sheet.ts";

/** What the questions about a class's future need besides its prices. */
export type OutlookSheetInput = PriceSheetInput & {
  /** mats that the plan holds; null until it is worked out */
  readonly mats: number | null;
  readonly happened: HappenedDocument;
};

/** Answers an outlook document; given from outside, so that the same question need not be learned from twice. */
export type AskOutlook = typeof outlookAnswer;

/** The parts of a class's page that look ahead. */
export type OutlookSheet = {
  /** how many to accept for a free first class, and what it taught */
  readonly opening: OpeningPart;
  /** how many wanted to come, where full evenings hide it */
  readonly demand: DemandPart;
  /** what happened and what lies ahead, with its band */
  readonly going: GoingPart;
  /** keep, change or close */
  readonly next: NextPart;
  /** what might be done about full evenings */
  readonly full: FullPart;
  /** run the next session, have it covered, or cancel */
  readonly evening: EveningChoicePart;
};

/** Works the parts out; pure. Learning from the record takes some tenths of a second: ask for it beside the page. */
export function outlookSheet(input: OutlookSheetInput, ask: AskOutlook): OutlookSheet {
  const opening = openingPart(input);
  const asked = outlookAsked(input, ask, opening.kind === "ready" ? opening.accept : null);
  return {
    opening,
    demand: demandPart(input),
    going: goingPart(input, asked),
    next: nextPart(input, asked),
    full: fullPart(input, asked),
    evening: eveningChoicePart(input, asked),
  };
}
