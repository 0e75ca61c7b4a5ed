import { classOpeningQuestion, guessesBehind, isOutlookGuess, outlookFigure, classAnswer } from "#core/class";
import { openingAnswer, type OpeningDocumentInput, type OpeningJson } from "#core/outlook";
import { chanceText, coinText } from "#core/price";
import { hireKnown } from "./hire-known.ts";
import { figureGuesses } from "./outlook-guesses.ts";
import type { OutlookSheetInput } from "./outlook-sheet.ts";
import { missing, type SheetPart, saidOn, unsound } from "./sheet-part.ts";

/** One number of people accepted, and the night that may come of it. */
export type NightRow = {
  readonly accepted: number;
  readonly over: string;
  readonly turnedAway: string;
  readonly empty: string;
  readonly marked: boolean;
};

export type OpeningPart = SheetPart<{
  readonly accept: number;
  readonly room: number;
  readonly rows: readonly NightRow[];
}>;

/** How many may say yes to a free first class, and what the first one taught. */
export function openingPart(input: OutlookSheetInput): OpeningPart {
  const { document, mats, money } = input;
  if (mats === null) {
    return missing(
      "How many mats there are is not worked out yet, so nobody can say how many to accept.",
      "Choose a hall and look at its floor plan.",
    );
  }
  const read = openingAnswer(questionOf(input, mats), (exact) => money(exact));
  if (!read.ok) {
    return unsound(
      read.problems.map((it) => ({
        ...it,
        place: it.place === "mats" ? "mats" : `outlook.opening.${it.place}`,
      })),
    );
  }
  const { json } = read.value;
  const guesses = [
    ...guessesBehind(document, "mats"),
    ...figureGuesses(document, [
      "opening.turnUp",
      ...(document.outlook?.opening?.happened?.returned === undefined ? [] : (["opening.returns"] as const)),
    ]),
  ];
  return {
    ...saidOn(input, guesses, json.sentences, workingsOf(json)),
    accept: json.accept,
    room: json.room,
    rows: rowsOf(json),
  };
}

function questionOf(input: OutlookSheetInput, mats: number): OpeningDocumentInput {
  const { document, hall, practice } = input;
  const { matsOwned, ownCap, insurerCap } = document;
  return {
    ...classOpeningQuestion(document),
    mats: matsOwned === null ? mats : Math.min(mats, matsOwned),
    ...(ownCap === null ? {} : { ownCap }),
    ...(insurerCap === null ? {} : { insurerCap }),
    ...(hall?.postedCapacity === undefined ? {} : { postedCapacity: hall.postedCapacity }),
    ...(hall?.peopleNotOnMats === undefined ? {} : { notOnMats: hall.peopleNotOnMats }),
    currency: practice.currency,
    ...stayerOf(input),
    guesses: isOutlookGuess(document, "opening.turnUp") ? ["turnUp"] : [],
  };
}

/** What one who stays is worth is told once it is known what a person brings. */
function stayerOf({
  document,
  hall,
  practice,
  today,
}: OutlookSheetInput): Pick<OpeningDocumentInput, "stayer"> {
  const known = hireKnown({ hall });
  if (known.kind === "missing") return {};
  const read = classAnswer(document, known.hall, practice.currency, today, "break-even");
  if (!read.ok) return {};
  return {
    stayer: {
      yield: coinText(read.value.yield, read.value.currency),
      perHead: document.costs.perHead,
      attendance: outlookFigure(document, "roll.attends"),
      leaving: outlookFigure(document, "roll.leaves"),
    },
  };
}

function rowsOf({ table, accept }: OpeningJson): readonly NightRow[] {
  return table.map((night) => ({
    accepted: night.accepted,
    over: chanceText(night.chanceOver),
    turnedAway: night.turnedAway.toFixed(1),
    empty: night.emptyMats.toFixed(1),
    marked: night.accepted === accept,
  }));
}

function workingsOf({ working }: OpeningJson) {
  return [
    { title: "How many to accept", lines: working.filter(({ part }) => part === "accept") },
    { title: "One person who stays", lines: working.filter(({ part }) => part === "stayer") },
  ];
}
