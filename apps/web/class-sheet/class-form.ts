import { type ClassDocument, isGuess, markGuess, markKnown } from "#core/class";
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
      isGuess: (path) => isGuess(document, path),
      setGuess: (path, guess) =>
        keeper.change((before) => (guess ? markGuess(before, path) : markKnown(before, path))),
    }),
    [document, typed, keeper, currency, problems],
  );
}
