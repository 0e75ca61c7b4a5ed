import type { Fitted } from "./use-mat-plan.ts";

type Props = { readonly fitted: Fitted };

/** How far the search for the most has come, and a way to stop it and to go on; nothing where there is no search. */
export function SearchProgress({ fitted }: Props) {
  const { search } = fitted;
  if (search === null || search.state === "finished") return null;
  const resting = search.state === "rests";
  return (
    <div className="row no-print">
      <p className="small">
        {resting ? "The search was stopped and keeps its best plan." : search.whatItIsDoing}
      </p>
      <button type="button" className="button" onClick={resting ? fitted.goOn : fitted.rest}>
        {resting ? "Go on looking" : "Stop looking"}
      </button>
    </div>
  );
}
