import { capacityCaution, capacityOf, type HallDocument } from "#core/hall";
import { provenWords } from "./proven-words.ts";
import type { Fitted } from "./use-mat-plan.ts";

type Props = { readonly document: HallDocument; readonly fitted: Fitted; readonly sound: boolean };

/** How many mats fit and what sets the number, before anything is drawn. */
export function MatAnswer({ document, fitted, sound }: Props) {
  const { plan } = fitted;
  if (plan === null) {
    return (
      <p className="answer" data-withheld>
        {sound
          ? "Working out how many mats fit."
          : "How many mats fit is not known until the floor is sound."}
      </p>
    );
  }
  const { postedCapacity, peopleNotOnMats } = document;
  const { sentence } = capacityOf(plan, { postedCapacity, peopleNotOnMats });
  return (
    <div className="stack-close">
      <p className="answer" data-withheld={sound ? undefined : true}>
        {sound ? sentence : `Before the last change: ${sentence}`}
      </p>
      <p className="rests-on">{provenWords(plan.count, plan.bound, plan.proven)}</p>
      <p className="caution">{capacityCaution}</p>
    </div>
  );
}
