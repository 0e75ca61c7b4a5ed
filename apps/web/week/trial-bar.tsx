import { planChanges, type WeekWriter } from "#app/views";
import type { Trial } from "./plan-form.ts";

/** Begins a trial, or takes it back: the same button in the same place, so that the focus stays. */
export function TrialButton({ trial }: { readonly trial: Trial }) {
  const { tried, begin, takeBack } = trial;
  return (
    <p className="row no-print week-try">
      <button
        type="button"
        className="button"
        onClick={() => (tried === null ? begin((plan) => plan) : takeBack())}
      >
        {tried === null ? "What if: try changes without keeping them" : "Take the trial back"}
      </button>
    </p>
  );
}

type Props = { readonly trial: Trial; readonly write: WeekWriter };

/** Says that what is changed is only tried, wherever she is on the page; takes it back or keeps it with one press. */
export function TrialBar({ trial, write }: Props) {
  const { kept, tried, takeBack, keep } = trial;
  if (tried === null) return null;
  const changes = planChanges(kept, tried, write);
  return (
    <section className="trial-bar no-print" aria-label="On trial">
      <p>
        <strong>Only a trial{changes.length === 0 ? "." : ":"}</strong>{" "}
        {changes.length === 0
          ? "Change anything on this page; nothing of it is kept."
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
