import type { Hall, ArrangedMatPlan } from "#core/hall";
import type { LengthUnits } from "#core/words";
import { PlanPicture } from "../floor/plan-picture.tsx";

type Props = {
  readonly id: string;
  /** what is done differently and what it gives */
  readonly sentence: string;
  readonly hall: Hall;
  readonly plan: ArrangedMatPlan;
  readonly units: LengthUnits;
  readonly keep: () => void;
  readonly takeBack: () => void;
};

/** A plan as it would be, marked as a trial in words and by its broken edge: nothing of it is kept by looking. */
export function TrialPicture({ id, sentence, hall, plan, units, keep, takeBack }: Props) {
  return (
    <figure className="trial" id={id}>
      <figcaption>
        <strong>Only a trial.</strong> {sentence} The hall stays as it is until you keep this.
      </figcaption>
      <PlanPicture hall={hall} plan={plan} units={units} />
      <p className="row">
        <button type="button" className="button button-main" onClick={keep}>
          Keep this change
        </button>
        <button type="button" className="button" onClick={takeBack}>
          Take it back
        </button>
      </p>
    </figure>
  );
}
