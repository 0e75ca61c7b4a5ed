import type { Capacity } from "#core/hall";
import { type ChangesPart, changesPart } from "./changes-part.ts";
import type { ClassSheetInput } from "./class-sheet-input.ts";
import { type CoursesPart, coursesPart } from "./courses-part.ts";
import { type CurvePart, curvePart } from "./curve-part.ts";
import { type HigherPart, higherPart } from "./higher-part.ts";
import { type LadderPart, ladderPart } from "./ladder-part.ts";
import { type OwedPart, owedPart } from "./owed-part.ts";
import { type PassesPart, passesPart } from "./passes-part.ts";
import { pricesAsked } from "./prices-asked.ts";
import { type StudioPart, studioPart } from "./studio-part.ts";
import { type SurePart, surePart } from "./sure-part.ts";

/** What the questions about prices need; the capacity is null until the floor is worked out. */
export type PriceSheetInput = Pick<ClassSheetInput, "practice" | "document" | "hall" | "today" | "money"> & {
  readonly capacity: Pick<Capacity, "capacity"> | null;
};

/** The parts of a class's page that ask more of its prices. */
export type PriceSheet = {
  /** whether the prices hold together */
  readonly ladder: LadderPart;
  /** late joiners, refunds and a year by the month */
  readonly courses: CoursesPart;
  /** for how long each pass should run */
  readonly passes: PassesPart;
  /** what is owed on the passes that are out */
  readonly owed: OwedPart;
  /** how surely an evening and a term pay */
  readonly sure: SurePart;
  /** which single price leaves most */
  readonly curve: CurvePart;
  /** what a rise may lose, and the price for a wanted pay */
  readonly higher: HigherPart;
  readonly studio: StudioPart;
  /** what would change the answer, the nearest first */
  readonly changes: ChangesPart;
};

/** Works the questions about prices out; pure. Some tens of milliseconds: ask for it beside the page. */
export function priceSheet(input: PriceSheetInput): PriceSheet {
  const asked = pricesAsked(input);
  return {
    ladder: ladderPart(input, asked),
    courses: coursesPart(input, asked),
    passes: passesPart(input),
    owed: owedPart(input),
    sure: surePart(input, asked),
    curve: curvePart(input, asked),
    higher: higherPart(input, asked),
    studio: studioPart(input, asked),
    changes: changesPart(input, asked),
  };
}
