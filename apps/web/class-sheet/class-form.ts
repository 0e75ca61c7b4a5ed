import {
  type ClassDocument,
  type FigureName,
  isGuess,
  isOutlookGuess,
  isPlanningGuess,
  markGuess,
  markKnown,
  outlookFigure,
  outlookFigureAt,
  withFigure,
  withOutlookFigure,
} from "#core/class";
import { USUAL_SEASON } from "#core/outlook";
import type { CurrencyCode, Problem } from "#core/words";
import { useMemo } from "react";
import type { Opened } from "../drafts/use-draft.ts";
import type { Form } from "../fields/form.tsx";

/** The form over a class's document; `problems` come with the answers that they keep back. */
export function useClassForm(
  opened: Opened<ClassDocument>,
  currency: CurrencyCode,
  problems: readonly Problem[],
): Form {
  const { draft, keeper } = opened;
  const { document, typed } = draft;
  return useMemo(
    () => ({
      currency,
      typed,
      type: keeper.type,
      dropTyped: keeper.dropTyped,
      problems,
      isGuess: (path) => guessAt(document, path),
      setGuess: (path, guess) => keeper.change((before) => withGuess(before, path, guess)),
    }),
    [document, typed, keeper, currency, problems],
  );
}

const figures: Readonly<Record<string, FigureName>> = {
  "planning.attendance": "attendance",
  "planning.confidence": "confidence",
  "planning.dispersion": "dispersion",
  "planning.termEvenings": "termEvenings",
};

const SEASON = "outlook.season";

function guessAt(document: ClassDocument, path: string): boolean {
  const figure = figures[path];
  if (figure !== undefined) return isPlanningGuess(document, figure);
  const ahead = outlookFigureAt(path);
  if (ahead !== null) return isOutlookGuess(document, ahead);
  if (path === SEASON && document.outlook?.season === undefined) return true;
  return isGuess(document, path);
}

/** A figure that is called known is written down as it stands: what is not there is always a guess. */
function withGuess(document: ClassDocument, path: string, guess: boolean): ClassDocument {
  return guess ? markGuess(document, path) : markKnown(writtenDown(document, path), path);
}

function writtenDown(document: ClassDocument, path: string): ClassDocument {
  const figure = figures[path];
  if (figure !== undefined) return withFigure(document, figure);
  const ahead = outlookFigureAt(path);
  if (ahead !== null) return withOutlookFigure(document, ahead, outlookFigure(document, ahead));
  if (path !== SEASON || document.outlook?.season !== undefined) return document;
  return { ...document, outlook: { ...document.outlook, season: [...USUAL_SEASON] } };
}
