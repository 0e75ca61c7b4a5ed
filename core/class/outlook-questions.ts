import type { OpeningDocumentInput, OutlookDocumentInput } from "#core/outlook";
import type { ClassDocument } from "./class-document.ts";
import { type OutlookFigure, outlookFigure } from "./outlook-figures.ts";

type Planned = Pick<ClassDocument, "outlook">;

/** What a class itself says to the question how it will go: its guesses, its season, its notice, its remedies. */
export function classOutlookQuestion(
  document: Planned,
): Pick<OutlookDocumentInput, "roll" | "regulars" | "startedBefore" | "season" | "notice" | "full"> {
  const { regulars, startedBefore, season, notice, full } = document.outlook ?? {};
  const figure = (name: OutlookFigure): number => outlookFigure(document, name);
  return {
    roll: {
      newcomers: figure("roll.newcomers"),
      stays: figure("roll.stays"),
      attends: figure("roll.attends"),
      leaves: figure("roll.leaves"),
      luck: figure("roll.luck"),
    },
    ...(regulars === undefined ? {} : { regulars }),
    ...(startedBefore === undefined ? {} : { startedBefore }),
    ...(season === undefined ? {} : { season }),
    ...(full === undefined ? {} : { full }),
    notice: { ...notice, days: figure("notice.days"), term: figure("notice.term") },
  };
}

/** What a class itself says to the question how many to accept at its opening. */
export function classOpeningQuestion(
  document: Planned,
): Pick<OpeningDocumentInput, "turnUp" | "pairs" | "risk" | "paid" | "costs" | "happened" | "returns"> {
  const { opening } = document.outlook ?? {};
  return {
    ...opening,
    turnUp: outlookFigure(document, "opening.turnUp"),
    returns: outlookFigure(document, "opening.returns"),
  };
}
