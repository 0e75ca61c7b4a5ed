import {
  type ClassDocument,
  type FigureName,
  isGuess,
  isPlanningGuess,
  markGuess,
  markKnown,
  withFigure,
} from "#core/class";
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

function guessAt(document: ClassDocument, path: string): boolean {
  const figure = figures[path];
  return figure === undefined ? isGuess(document, path) : isPlanningGuess(document, figure);
}

/** A planning figure that is called known is written down as it stands: what is not there is always a guess. */
function withGuess(document: ClassDocument, path: string, guess: boolean): ClassDocument {
  if (guess) return markGuess(document, path);
  const figure = figures[path];
  return markKnown(figure === undefined ? document : withFigure(document, figure), path);
}
