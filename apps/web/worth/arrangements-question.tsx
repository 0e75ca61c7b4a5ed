import {
  type ArrangedMatPlan,
  type Arrangement,
  type ArrangementRow,
  arrangementWords,
  type Hall,
} from "#core/hall";
import { formatLength, type LengthUnits } from "#core/words";
import { useMemo, useState } from "react";
import { ArrangementList } from "./arrangement-list.tsx";
import { ArrangementTable } from "./arrangement-table.tsx";
import type { ArrangementsJob } from "./arrangements-worker.ts";
import type { FloorHistory } from "../floor/use-floor-history.ts";
import { LayingFields } from "./laying-fields.tsx";
import { Question } from "./question.tsx";
import { StepButtons } from "./step-buttons.tsx";
import { useSteps } from "./use-steps.ts";
import { useWide } from "./use-wide.ts";

type Props = {
  readonly hall: Hall;
  readonly plan: ArrangedMatPlan;
  readonly floor: FloorHistory;
  readonly units: LengthUnits;
  readonly wayWidth: number;
  /** what is asked for: its plan may still be on its way */
  readonly chosen: Arrangement;
  readonly choose: (arrangement: Arrangement) => void;
};

/** Every way to lay the mats beside the others, by what there is to judge it by; one click lays them so. */
export function ArrangementsQuestion({ hall, plan, floor, units, wayWidth, chosen, choose }: Props) {
  const [open, setOpen] = useState(false);
  const wide = useWide();
  const job = useMemo(() => ({ hall, plan, wayWidth, units }), [hall, plan, wayWidth, units]);
  const steps = useSteps<ArrangementsJob, ArrangementRow>(startArrangementsWorker, open ? job : null);
  const { list } = steps;
  const mine = list?.job.hall === hall && list.job.wayWidth === wayWidth ? list : null;
  const shown = {
    hall,
    rows: mine?.items ?? [],
    chosen,
    choose,
    units,
    caption: "Ways to lay the mats on this floor",
  };
  return (
    <Question
      title="How the mats lie"
      says={`${plan.count} ${plan.count === 1 ? "lies" : "lie"} ${arrangementWords[plan.arrangement]}; open this for the other ways.`}
      onOpen={setOpen}
    >
      <LayingFields plan={plan} floor={floor} units={units} />
      {mine === null ? null : (
        <>
          {wide ? <ArrangementTable {...shown} /> : <ArrangementList {...shown} />}
          <StepButtons steps={steps} {...mine} />
          {mine.state === "failed" && <p>The other ways could not be worked out on this device.</p>}
        </>
      )}
      <p className="small soft">
        At most: what no plan of that kind can pass; proven where a plan has as many. Cannot see: mats from
        which somebody stands before the teacher. Least gap: between the nearest two mats. Way out: whether
        everybody has a way {formatLength(wayWidth, units)} wide to a door. Along the walls or across them is
        looked at for a second or two only; laid so, the search goes on.
      </p>
    </Question>
  );
}

function startArrangementsWorker(): Worker {
  return new Worker(new URL("./arrangements-worker.ts", import.meta.url), { type: "module" });
}
