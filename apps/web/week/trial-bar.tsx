import { planChanges, type WeekWriter } from "#app/views";
import type { Trial } from "./plan-form.ts";

type Props = { readonly trial: Trial; readonly write: WeekWriter };

/** Says whether what is changed below is kept or only tried, and takes a trial back with one press. */
export function TrialBar({ trial, write }: Props) {
  const { kept, tried, begin, takeBack, keep } = trial;
  if (tried === null)
    return (
      <p className="row no-print week-try">
        <button type="button" className="button" onClick={() => begin((plan) => plan)}>
          What if: try changes without keeping them
        </button>
      </p>
    );
  const changes = planChanges(kept, tried, write);
  return (
    <section className="trial-bar no-print" aria-label="On trial">
      <p>
        <strong>Only a trial.</strong>{" "}
        {changes.length === 0
          ? "Change anything below; nothing of it is kept."
          : `${changes.join("; ")}. Nothing of it is kept.`}
      </p>
      <p className="row">
        <button type="button" className="button button-main" onClick={takeBack}>
          Take it back
        </button>
        <button type="button" className="button" disabled={changes.length === 0} onClick={keep}>
          Keep it
        </button>
      </p>
    </section>
  );
}
