import { classAnswer } from "#core/class";
import { breakEvenSentence } from "#core/price";
import type { ClassSheetInput } from "./class-sheet-input.ts";
import { hireKnown } from "./hire-known.ts";
import { type SheetPart, said, unsound } from "./sheet-part.ts";

export type PricesPart = SheetPart<{
  /** heads that pay for the evening; null is never */
  readonly breakEven: number | null;
}>;

/** What one person brings on average, and how many people pay for the room. */
export function pricesPart(input: ClassSheetInput): PricesPart {
  const { document, practice, money, today, capacity } = input;
  const known = hireKnown(input);
  if (known.kind === "missing") return known;
  const read = classAnswer(document, known.hall, practice.currency, today, "break-even");
  if (!read.ok) return unsound(read.problems);
  const answer = read.value;
  const tooMany =
    answer.breakEven !== null && capacity !== null && answer.breakEven > capacity.capacity
      ? [`That is more than there is room for: ${capacity.capacity}.`]
      : [];
  const says = [
    breakEvenSentence(answer, money),
    ...tooMany,
    `One person brings ${money(answer.yield)} on average over all ways of paying.`,
  ];
  const workings = [
    { title: "What one person brings", lines: answer.working.yield },
    { title: "Who pays for the room", lines: answer.working.breakEven },
  ];
  return { ...said(input, "break-even", says, workings), breakEven: answer.breakEven };
}
