import type { ArrangedMatPlan, Hall, Sight } from "#core/hall";
import type { LengthUnits } from "#core/words";
import { PlanPicture } from "../floor/plan-picture.tsx";
import { MarkKey } from "./mark-key.tsx";
import { CrossedMats } from "./mat-marks.tsx";

type Props = {
  readonly hall: Hall;
  readonly plan: ArrangedMatPlan;
  readonly units: LengthUnits;
  readonly sight: Sight;
};

/** A plan with the mats crossed that do not see the teacher, and what a cross means. */
export function SightPicture({ hall, plan, units, sight: { hidden } }: Props) {
  return (
    <>
      <PlanPicture
        hall={hall}
        plan={plan}
        units={units}
        says={`${hidden.length} that do not see the teacher are crossed`}
        renderAbove={(view) => (
          <CrossedMats mat={hall.mat} mats={plan.mats} marked={hidden.map((it) => it.mat)} view={view} />
        )}
      />
      {hidden.length > 0 && <MarkKey marks={[{ kind: "cross", says: "does not see the teacher" }]} />}
    </>
  );
}
