import { isGuess, isOutlookGuess, type OutlookFigure } from "#core/class";
import type { OutlookSheetInput } from "./outlook-sheet.ts";

type Planned = OutlookSheetInput["document"];

const ROLL: readonly OutlookFigure[] = [
  "roll.newcomers",
  "roll.stays",
  "roll.attends",
  "roll.leaves",
  "roll.luck",
];

/** The guesses about newcomers, regulars and seasons; a season that nobody entered is a usual year. */
export function rollGuesses(document: Planned): readonly string[] {
  const season = document.outlook?.season === undefined || isGuess(document, "outlook.season");
  return [...figureGuesses(document, ROLL), ...(season ? ["outlook.season"] : [])];
}

export function figureGuesses(document: Planned, names: readonly OutlookFigure[]): readonly string[] {
  return names.filter((name) => isOutlookGuess(document, name)).map((name) => `outlook.${name}`);
}
