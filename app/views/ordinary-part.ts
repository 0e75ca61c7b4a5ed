import { classAnswer, headsRange } from "#core/class";
import { contributionOf, type EveningAnswer, ordinarySentence } from "#core/price";
import { exactNumberText } from "#core/words";
import { Fraction } from "fraction.js";
import type { ClassSheetInput } from "./class-sheet-input.ts";
import { type HeadsRow, headsRows } from "./heads-rows.ts";
import { hireKnown } from "./hire-known.ts";
import { type SheetPart, said, unsound } from "./sheet-part.ts";

export type OrdinaryPart = SheetPart<{
  /** people on an ordinary evening; a mean may have a fraction */
  readonly heads: number;
  readonly rows: readonly HeadsRow[];
}>;

/** What an ordinary evening leaves, what an hour of it brings, and the whole table over heads. */
export function ordinaryPart(input: ClassSheetInput): OrdinaryPart {
  const { document, practice, money, today, capacity } = input;
  const known = hireKnown(input);
  if (known.kind === "missing") return known;
  const read = classAnswer(document, known.hall, practice.currency, today, "ordinary evening");
  if (!read.ok) return unsound(read.problems);
  const answer = read.value;
  const says = [
    ordinarySentence(answer, money),
    ...rangeSentences(input, answer),
    ...hourSentences(input, answer),
    ...fullSentences(input, answer),
  ];
  const workings = [{ title: "An hour of your time", lines: answer.working.hourly }];
  return {
    ...said(input, "ordinary evening", says, workings),
    heads: answer.heads.valueOf(),
    rows: headsRows(answer, capacity?.capacity ?? null, money),
  };
}

/** While the number of people is a guess, the evening with a quarter fewer and a quarter more. */
function rangeSentences(
  { document, capacity, money }: ClassSheetInput,
  answer: EveningAnswer,
): readonly string[] {
  const range = headsRange(document, capacity?.capacity ?? null);
  if (range === null) return [];
  const [low, high] = range.map((heads) => money(leavesWith(heads, answer)));
  return [`How many come is a guess: with ${range[0]} it would be ${low}, with ${range[1]} ${high}.`];
}

function leavesWith(heads: number, answer: EveningAnswer): Fraction {
  return contributionOf(new Fraction(heads), answer.yield.sub(answer.costPerHead), answer.cost);
}

function hourSentences({ money }: ClassSheetInput, { trueHourly }: EveningAnswer): readonly string[] {
  if (trueHourly === null) return [];
  const what = "With preparation, messages and its share of fixed costs counted";
  return trueHourly.lt(0)
    ? [`${what}, each hour of your time costs you ${money(trueHourly.abs())}.`]
    : [`${what}, an hour of your time brings ${money(trueHourly)} before tax.`];
}

function fullSentences({ money, capacity }: ClassSheetInput, answer: EveningAnswer): readonly string[] {
  if (capacity === null) return [];
  const places = capacity.capacity;
  if (answer.heads.gt(places)) {
    return [`${exactNumberText(answer.heads)} people are more than there is room for: ${places}.`];
  }
  const full = leavesWith(places, answer);
  return full.lt(0)
    ? [`Even with all ${places} places taken an evening is ${money(full.abs())} short.`]
    : [`With all ${places} places taken an evening leaves ${money(full)}.`];
}
