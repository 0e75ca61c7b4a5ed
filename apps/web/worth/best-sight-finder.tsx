import { type ArrangedMatPlan, type BestSight, type Hall, setOutInWords } from "#core/hall";
import type { LengthUnits } from "#core/words";
import { useId, useState } from "react";
import { readNumber } from "../fields/read-number.ts";
import { Show } from "../parts/show.tsx";
import type { BestSightJob } from "./best-sight-worker.ts";
import { SightPicture } from "./sight-picture.tsx";
import { StepButtons } from "./step-buttons.tsx";
import { useSteps } from "./use-steps.ts";

type Props = { readonly hall: Hall; readonly plan: ArrangedMatPlan; readonly units: LengthUnits };

/** Looks for a plan of so many mats from which as few as can be found do not see the teacher. */
export function BestSightFinder({ hall, plan, units }: Props) {
  const id = useId();
  const [typed, setTyped] = useState(String(plan.count));
  const [job, setJob] = useState<BestSightJob | null>(null);
  const steps = useSteps<BestSightJob, BestSight>(startBestSightWorker, job);
  const read = readNumber(typed, { least: 1, most: 1000, whole: true }, "mats");
  const mine = steps.list !== null && steps.list.job === job && job?.hall === hall ? steps.list : null;
  const found = mine?.items.at(-1) ?? null;
  return (
    <div className="stack">
      <p className="row">
        <label htmlFor={id}>The best sight there is for so many mats</label>
        <input
          id={id}
          className="field-box"
          inputMode="numeric"
          value={typed}
          aria-invalid={!read.ok}
          aria-describedby={read.ok ? undefined : `${id}-problem`}
          onChange={(event) => setTyped(event.target.value)}
        />
        <button
          type="button"
          className="button"
          onClick={() => {
            if (read.ok) setJob({ hall, plan, count: read.value, units });
          }}
        >
          Look for it
        </button>
      </p>
      {!read.ok && (
        <p className="field-problem" id={`${id}-problem`} role="alert">
          {read.problems.map((it) => `${it.says} ${it.next}`).join(" ")}
        </p>
      )}
      <output className="place-told">
        {found?.sentences.join(" ") ?? (mine === null ? "" : "Trying the first plan …")}
        {mine?.state === "failed" ? " It could not be worked out on this device." : ""}
      </output>
      {mine !== null && <StepButtons steps={steps} {...mine} total={found?.of ?? null} />}
      {found?.best != null && <BestPlan hall={hall} found={found.best} units={units} />}
    </div>
  );
}

type BestPlanProps = {
  readonly hall: Hall;
  readonly found: NonNullable<BestSight["best"]>;
  readonly units: LengthUnits;
};

/** What was found, to be laid from its own figures: the hall's plan stays what it is. */
function BestPlan({ hall, found: { plan, sight }, units }: BestPlanProps) {
  return (
    <figure className="trial">
      <figcaption>
        <strong>For sight only.</strong> The hall’s own plan stays as it is.
      </figcaption>
      <SightPicture hall={hall} plan={plan} units={units} sight={sight} />
      <Show summary="Set these mats out with a tape">
        <ul className="set-out">
          {setOutInWords(plan, units).map((says) => (
            <li key={says}>{says}</li>
          ))}
        </ul>
      </Show>
    </figure>
  );
}

function startBestSightWorker(): Worker {
  return new Worker(new URL("./best-sight-worker.ts", import.meta.url), { type: "module" });
}
