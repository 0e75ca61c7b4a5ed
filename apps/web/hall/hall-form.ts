import { type HallDocument, readHall, readHireTerms } from "#core/hall";
import { type CurrencyCode, type PracticeDocument, type Problem, isCurrency } from "#core/words";
import { useMemo } from "react";
import type { Opened } from "../drafts/use-draft.ts";
import type { Form } from "../fields/form.tsx";

/** The form over a hall's document: what is wrong with it, in its own words, at each field. */
export function useHallForm(opened: Opened<HallDocument>, practice: PracticeDocument): Form {
  const { draft, keeper } = opened;
  const { document, typed } = draft;
  return useMemo(() => {
    const currency = currencyOf(document.currency ?? practice.currency);
    return {
      currency,
      typed,
      type: keeper.type,
      dropTyped: keeper.dropTyped,
      problems: hallProblems(document, currency),
      isGuess: null,
      setGuess: () => undefined,
    };
  }, [document, typed, keeper, practice.currency]);
}

/** A practice has a currency that exists: the server takes no other. */
export function currencyOf(code: string): CurrencyCode {
  if (!isCurrency(code)) throw new RangeError(`not a currency: ${code}`);
  return code;
}

function hallProblems(document: HallDocument, currency: CurrencyCode): readonly Problem[] {
  const hall = readHall(document);
  const hire = document.hire === undefined ? null : readHireTerms(document.hire, currency, "hire");
  return [...(hall.ok ? [] : hall.problems), ...(hire === null || hire.ok ? [] : hire.problems)];
}
