import { arrangementWords, capacityCaution, capacityOf, type HallDocument } from "#core/hall";
import { SearchProgress } from "./search-progress.tsx";
import { provenWords } from "./proven-words.ts";
import type { Fitted } from "./use-mat-plan.ts";

type Props = { readonly document: HallDocument; readonly fitted: Fitted; readonly sound: boolean };

/** How many mats fit and what sets the number, before anything is drawn. */
export function MatAnswer({ document, fitted, sound }: Props) {
  const { plan } = fitted;
  const asked = document.arrangement ?? "lines";
  const withheld = plan === null || !sound;
  return (
    <div className="stack-close">
      <p className="answer" data-withheld={withheld ? true : undefined} tabIndex={-1} aria-live="polite">
        {answerWords(document, fitted, sound)}
      </p>
      {plan !== null && (
        <p className="rests-on">
          {plan.arrangement === asked
            ? provenWords(plan)
            : `Working out how many lie ${arrangementWords[asked]} …`}
        </p>
      )}
      <SearchProgress fitted={fitted} />
      {plan !== null && <p className="caution">{capacityCaution}</p>}
    </div>
  );
}

function answerWords(document: HallDocument, { plan }: Fitted, sound: boolean): string {
  if (plan === null) {
    return sound
      ? "Working out how many mats fit."
      : "How many mats fit is not known until the floor is sound.";
  }
  const { postedCapacity, peopleNotOnMats } = document;
  const { sentence } = capacityOf(plan, { postedCapacity, peopleNotOnMats });
  return sound ? sentence : `Before the last change: ${sentence}`;
}
