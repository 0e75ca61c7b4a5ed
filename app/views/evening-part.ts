import { classAnswer, countedHours } from "#core/class";
import type { HallDocument } from "#core/hall";
import { costSentence } from "#core/price";
import { type CurrencyCode, exactNumberText } from "#core/words";
import type { ClassSheetInput } from "./class-sheet-input.ts";
import { dateWords } from "./date-words.ts";
import { hireKnown } from "./hire-known.ts";
import { type SheetPart, said, unsound } from "./sheet-part.ts";

export type EveningPart = SheetPart<{
  /** ISO date of the evening that is worked out */
  readonly date: string;
  readonly chargedMinutes: number;
}>;

/** What the next evening costs, from the minutes in the hall to the sum. */
export function eveningPart(input: ClassSheetInput): EveningPart {
  const { document, practice, money, today } = input;
  const known = hireKnown(input);
  if (known.kind === "missing") return known;
  const read = classAnswer(document, known.hall, practice.currency, today, "evening cost");
  if (!read.ok) return unsound(read.problems);
  const answer = read.value;
  const date = answer.date.toString();
  const says = [
    costSentence(answer, practice.locale, money),
    `That is the evening of ${dateWords(date, practice.locale)}; heating, weekends and new rates change it.`,
    ...hoursSentences(input, known.hall, answer.currency),
  ];
  const workings = [
    { title: "What the hall charges", lines: answer.working.hire },
    { title: "What the evening costs", lines: answer.working.cost },
  ];
  return { ...said(input, "evening cost", says, workings), date, chargedMinutes: answer.chargedMinutes };
}

/** Where a volume band goes by hours that nobody stated, which hours it was. */
function hoursSentences(
  input: ClassSheetInput,
  hall: HallDocument,
  currency: CurrencyCode,
): readonly string[] {
  const counted = countedHours(input.document, hall, currency, input.today);
  if (counted === null) return [];
  const hours = exactNumberText(counted.hours);
  return [
    `The hall’s volume bands go by ${hours} hours a year, which are the ${counted.sessions} evenings of this class; ` +
      "enter your hours in the hall’s terms if you hire it for more.",
  ];
}
